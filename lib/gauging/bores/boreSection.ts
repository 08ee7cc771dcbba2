import { type FoundDent, findDent } from "./findDent";
import { type Ovality, ovality } from "./ovality";
import { type PressDirection, pressDirection } from "./pressDirection";

type Diameter = Readonly<{ angleDeg: number; diameterMm: number }>;

/** All that diameters round one depth say. */
export type BoreSection = Readonly<{
  oval: Ovality;
  dent: FoundDent;
  /** The oval through the other readings, where one of them is a dent; else the same as `oval`. */
  besideDent: Ovality;
  press: PressDirection;
}>;

/**
 * Reads one section of a bore: its oval, a dent that no oval explains, and where to press. The press goes by the oval
 * without the dented reading: pressing would not take a dent out.
 *
 * @param readings angle in degrees and diameter in mm
 * @throws RangeError when an angle is not finite or a diameter not above 0
 * @example boreSection([]).oval.kind // "too few readings"
 * Source: see `ovality`, `findDent` and `pressDirection`.
 */
export function boreSection(readings: readonly Diameter[]): BoreSection {
  const oval = ovality(readings);
  const dent = findDent(readings);
  const besideDent =
    dent.kind === "dent" || dent.kind === "high"
      ? ovality(readings.filter((_, index) => index !== dent.index))
      : oval;
  return { oval, dent, besideDent, press: pressDirection(besideDent) };
}
