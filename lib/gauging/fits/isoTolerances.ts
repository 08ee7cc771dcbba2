/** A tolerance zone: upper and lower deviation from the nominal size, in micrometres. */
export type ToleranceZone = Readonly<{ upperUm: number; lowerUm: number }>;

/** The zones of holes and of shafts that are held here. */
export type HoleZone = "H6" | "H7";
export type ShaftZone = "f7" | "g5" | "g6" | "h6";

/**
 * Nominal sizes over the first, up to and including the second, with the standard tolerances IT5 to IT7 and the fundamental
 * deviations of f and g, in micrometres.
 *
 * Source: ISO 286-1, table 1 (standard tolerances), and ISO 286-2 (shafts f and g). The formulas behind them, with D the
 * geometric mean of a step: i = 0.45 D^(1/3) + 0.001 D; IT5 = 7 i, IT6 = 10 i, IT7 = 16 i; f = 5.5 D^0.41, g = 2.5 D^0.34. Up to
 * 18 mm the published tolerances lie up to a micrometre over the formula, and the published ones hold.
 */
export const isoSteps = [
  { over: 6, upTo: 10, it5: 6, it6: 9, it7: 15, f: 13, g: 5 },
  { over: 10, upTo: 18, it5: 8, it6: 11, it7: 18, f: 16, g: 6 },
  { over: 18, upTo: 30, it5: 9, it6: 13, it7: 21, f: 20, g: 7 },
  { over: 30, upTo: 50, it5: 11, it6: 16, it7: 25, f: 25, g: 9 },
  { over: 50, upTo: 80, it5: 13, it6: 19, it7: 30, f: 30, g: 10 },
] as const;

/**
 * The tolerance zone of a hole or shaft of a nominal size.
 *
 *   H: 0 to +IT;  h: -IT to 0;  f, g: -(deviation + IT) to -deviation
 *
 * @returns undefined for sizes of which no step is held here
 * @example isoZone("g6", 17) // { upperUm: -6, lowerUm: -17 }
 */
export function isoZone(zone: HoleZone | ShaftZone, nominalMm: number): ToleranceZone | undefined {
  const step = isoSteps.find(({ over, upTo }) => nominalMm > over && nominalMm <= upTo);
  if (!step) return undefined;
  switch (zone) {
    case "H6":
      return { upperUm: step.it6, lowerUm: 0 };
    case "H7":
      return { upperUm: step.it7, lowerUm: 0 };
    case "h6":
      return { upperUm: 0, lowerUm: -step.it6 };
    case "g5":
      return { upperUm: -step.g, lowerUm: -step.g - step.it5 };
    case "g6":
      return { upperUm: -step.g, lowerUm: -step.g - step.it6 };
    case "f7":
      return { upperUm: -step.f, lowerUm: -step.f - step.it7 };
  }
}
