import type { Bracket } from "../bracket";
import { roundMm } from "../lengths/roundMm";

/** By how much a bore is smaller than its reference, and the readings that each bound comes from. */
export type Reduction = Readonly<{
  /** It is reduced by more than this; null where nothing bounds it; negative when it may be larger instead. */
  overMm: number | null;
  /** It is reduced by less than this; null where nothing bounds it. */
  underMm: number | null;
  standing: "sure-reduced" | "sure-larger" | "undecided";
  overFrom: Readonly<{ referenceLowMm: number; highMm: number }> | null;
  underFrom: Readonly<{ referenceHighMm: number; lowMm: number }> | null;
  /** For each open end, what would bound it. */
  missing: readonly string[];
}>;

const wants = {
  referenceLow: "the largest plug that passes the reference bore",
  high: "the smallest plug that stops in this bore",
  referenceHigh: "the smallest plug that stops in the reference bore",
  low: "the largest plug that passes this bore",
};

/**
 * Bounds the reduction of a bore against a sound sibling or a stated size.
 *
 *   reference.low - bore.high < reduction < reference.high - bore.low
 *
 * Neither end is reached when the upper ends come from plugs that stopped. An end that no reading bounds stays open and is shown so.
 *
 * @param bore what is known of the troubled bore, at one depth
 * @param reference what is known of the sound one at the same depth, or of the size it had; never assumed
 * @returns the open interval in mm, its standing (`sure-reduced` when even the least is 0 or more) and where each bound comes from
 * @throws RangeError when a bracket's ends are the wrong way round
 * @example reduction({ lowMm: 17, highMm: 17.05 }, { lowMm: 17.08, highMm: null }).overMm // 0.03
 * Source: interval arithmetic (Moore 1966); plugs: common practice.
 */
export function reduction(bore: Bracket, reference: Bracket): Reduction {
  assertInOrder(bore);
  assertInOrder(reference);
  const overMm = subtract(reference.lowMm, bore.highMm);
  const underMm = subtract(reference.highMm, bore.lowMm);
  const missing = [
    ...(reference.lowMm === null ? [wants.referenceLow] : []),
    ...(bore.highMm === null ? [wants.high] : []),
    ...(reference.highMm === null ? [wants.referenceHigh] : []),
    ...(bore.lowMm === null ? [wants.low] : []),
  ];
  return {
    overMm,
    underMm,
    standing: standingOf(overMm, underMm),
    overFrom:
      reference.lowMm === null || bore.highMm === null
        ? null
        : { referenceLowMm: reference.lowMm, highMm: bore.highMm },
    underFrom:
      reference.highMm === null || bore.lowMm === null
        ? null
        : { referenceHighMm: reference.highMm, lowMm: bore.lowMm },
    missing,
  };
}

function subtract(fromMm: number | null, mm: number | null): number | null {
  return fromMm === null || mm === null ? null : roundMm(fromMm - mm);
}

function standingOf(overMm: number | null, underMm: number | null): Reduction["standing"] {
  // Two stated sizes that are equal give 0 at both ends: neither reduced nor larger.
  if (overMm === 0 && underMm === 0) return "undecided";
  if (overMm !== null && overMm >= 0) return "sure-reduced";
  return underMm !== null && underMm <= 0 ? "sure-larger" : "undecided";
}

function assertInOrder({ lowMm, highMm }: Bracket): void {
  if (lowMm !== null && highMm !== null && lowMm > highMm)
    throw new RangeError(
      `a bracket's low end must not be above its high end; got ${lowMm} to ${highMm} mm; take it from plugBracket`,
    );
}
