import { mmPerUnit } from "@/lib/gauging/lengths/lengthUnit";
import type { ShownUnit } from "../_components/readUnit";

/** A stretch of sizes drawn from left to right, with the marks along it. */
export type Scale = Readonly<{
  ticks: readonly Readonly<{ percent: number; label: string }>[];
  /** Place of a size in percent of the width, cut off at the ends. */
  percentOf: (mm: number) => number;
}>;

const steps: Readonly<Record<ShownUnit, readonly number[]>> = {
  inch: [1, 2, 5, 10, 20, 50, 100, 200, 500, 1000, 2000],
  mm: [0.01, 0.02, 0.05, 0.1, 0.2, 0.5, 1, 2, 5, 10, 20, 50],
};
const mostTicks = 9;

/**
 * Lays out a scale with round steps that takes in all sizes and a step on each side.
 *
 * @param sizesMm at least one
 * @param label writes a mark, given millimetres
 */
export function scaleOf(sizesMm: readonly number[], unit: ShownUnit, label: (mm: number) => string): Scale {
  const unitMm = unit === "mm" ? 1 : mmPerUnit.thou;
  const [least, most] = [Math.min(...sizesMm) / unitMm, Math.max(...sizesMm) / unitMm];
  const step = steps[unit].find((size) => (most - least) / size + 2 < mostTicks) ?? most - least + 1;
  const from = Math.floor(least / step + 1e-6) - 1;
  const to = Math.ceil(most / step - 1e-6) + 1;
  const percentOf = (mm: number) =>
    Math.min(100, Math.max(0, (100 * (mm / unitMm / step - from)) / (to - from)));
  return {
    percentOf,
    ticks: Array.from({ length: to - from - 1 }, (_, index) => {
      const mm = (from + 1 + index) * step * unitMm;
      return { percent: percentOf(mm), label: label(mm) };
    }),
  };
}
