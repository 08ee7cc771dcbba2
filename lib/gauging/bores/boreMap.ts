import { type BoreSection, boreSection } from "./boreSection";
import { type Taper, taper } from "./taper";

type Readings = Readonly<{
  /** From the end that the technician measures from; null where it was not said. */
  depthMm: number | null;
  readings: readonly Readonly<{ angleDeg: number; diameterMm: number }>[];
}>;

/** A bore along its depth. */
export type BoreMap = Readonly<{
  sections: readonly (Readonly<{ depthMm: number | null }> & BoreSection)[];
  taper: Taper;
}>;

/**
 * Maps a bore from diameters at several angles and depths: each depth's section, and the taper of their means.
 *
 * @param depths in any order; sections without a depth, or with too few readings, take no part in the taper
 * @returns sections in the order given
 * @throws RangeError as `boreSection` does
 * @example boreMap([]).taper.kind // "too few depths"
 * Source: see `boreSection` and `taper`.
 */
export function boreMap(depths: readonly Readings[]): BoreMap {
  const sections = depths.map(({ depthMm, readings }) => ({ depthMm, ...boreSection(readings) }));
  const means = sections.flatMap(({ depthMm, besideDent }) =>
    depthMm === null || besideDent.kind !== "fitted"
      ? []
      : [
          {
            depthMm,
            sizeMm: besideDent.meanMm,
            standardErrorMm: besideDent.standardErrors?.meanMm ?? null,
          },
        ],
  );
  return { sections, taper: taper(means) };
}
