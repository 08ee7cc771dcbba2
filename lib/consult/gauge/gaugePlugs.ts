import { lengthWords } from "../../gauging/lengths/lengthWords";
import { plugReport } from "../../gauging/plugs/plugReport";
import { plugWords } from "../../gauging/plugs/plugWords";
import type { GaugedBore, Interval } from "./gaugeAnswer";
import type { ReadingsInput } from "./readingsInput";
import { roundTo } from "./roundTo";

type Gauge = ReadingsInput["gauges"][number];

const mmPerThou = 0.0254;
const thou = (low: number | null, high: number | null): Interval => ({
  low: roundTo(low === null ? null : low / mmPerThou, 2),
  high: roundTo(high === null ? null : high / mmPerThou, 2),
});
const mm = (low: number | null, high: number | null): Interval => ({
  low: roundTo(low, 5),
  high: roundTo(high, 5),
});
const sizes = ({ lowMm, highMm }: Readonly<{ lowMm: number | null; highMm: number | null }>) => ({
  lowIn: roundTo(lowMm === null ? null : lowMm / 25.4, 5),
  highIn: roundTo(highMm === null ? null : highMm / 25.4, 5),
  lowMm: roundTo(lowMm, 5),
  highMm: roundTo(highMm, 5),
});

/** Turns one bore's plugs into numbers in inches and millimetres, words and flags. */
export function gaugePlugs({ part, ...written }: Gauge): GaugedBore {
  const report = plugReport(written);
  const { bore, reference, reduction, clearance, fit, leak, flags } = report;
  const names = { bore: part, reference: written.reference?.part ?? "the reference" };
  const words = plugWords(report, names, lengthWords("both"));
  return {
    part,
    depthIn: roundTo(bore.depthMm === null ? null : bore.depthMm / 25.4, 5),
    depthMm: roundTo(bore.depthMm, 5),
    ...sizes(bore),
    reference: reference ? { part: written.reference?.part ?? null, ...sizes(reference) } : null,
    reductionThou: reduction ? thou(reduction.overMm, reduction.underMm) : null,
    reductionMm: reduction ? mm(reduction.overMm, reduction.underMm) : null,
    reduction: reduction?.standing ?? null,
    clearanceThou: clearance
      ? { ...thou(clearance.leastMm, clearance.mostMm), verdict: clearance.standing }
      : null,
    clearanceMm: clearance ? mm(clearance.leastMm, clearance.mostMm) : null,
    fit: fit
      ? {
          sure: fit.kind === "within",
          names: fit.kind === "none" ? [] : fit.names,
          ...(fit.kind === "none" ? { why: fit.why } : {}),
        }
      : null,
    leak: leak
      ? {
          low: roundTo(leak.least, 3),
          high: roundTo(leak.most, 3),
          goodClearanceThou: roundTo(leak.goodClearanceMm / mmPerThou, 2),
        }
      : null,
    means: [words.size, words.reduction, words.clearance, words.fit, words.leak].filter(
      (sentence) => sentence !== undefined,
    ),
    flags,
  };
}
