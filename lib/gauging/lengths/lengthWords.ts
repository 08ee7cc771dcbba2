import { mmPerUnit } from "./lengthUnit";

/** How sizes and differences of sizes are written out: in inches and thou, in millimetres, or both. */
export type LengthWords = Readonly<{
  /** `.6840 in`, `17.374 mm` */
  size: (mm: number) => string;
  /** `1.4 thou`, `0.036 mm`; without its sign */
  difference: (mm: number) => string;
  /** How far a fit may be out, a digit finer: `0.09 thou`, `0.0023 mm` */
  error: (mm: number) => string;
  /** `1.20 in`, `30.5 mm` */
  depth: (mm: number) => string;
}>;

const inchWords: LengthWords = {
  size: (mm) => `${(mm / mmPerUnit.inch).toFixed(4).replace(/^0/, "")} in`,
  difference: (mm) => `${Math.abs(mm / mmPerUnit.thou).toFixed(1)} thou`,
  error: (mm) => `${Math.abs(mm / mmPerUnit.thou).toFixed(2)} thou`,
  depth: (mm) => `${(mm / mmPerUnit.inch).toFixed(2)} in`,
};
const mmWords: LengthWords = {
  size: (mm) => `${mm.toFixed(3)} mm`,
  difference: (mm) => `${Math.abs(mm).toFixed(3)} mm`,
  error: (mm) => `${Math.abs(mm).toFixed(4)} mm`,
  depth: (mm) => `${mm.toFixed(1)} mm`,
};
const bothWords: LengthWords = {
  size: (mm) => `${inchWords.size(mm)} (${mmWords.size(mm)})`,
  difference: (mm) => `${inchWords.difference(mm)} (${mmWords.difference(mm)})`,
  error: (mm) => `${inchWords.error(mm)} (${mmWords.error(mm)})`,
  depth: (mm) => `${inchWords.depth(mm)} (${mmWords.depth(mm)})`,
};

/**
 * The words for lengths in one unit or both.
 *
 * @param unit `inch` for inches and thou, `mm`, or `both`
 * @example lengthWords("inch").difference(-0.0254) // "1.0 thou"
 */
export function lengthWords(unit: "inch" | "mm" | "both"): LengthWords {
  switch (unit) {
    case "inch":
      return inchWords;
    case "mm":
      return mmWords;
    case "both":
      return bothWords;
  }
}
