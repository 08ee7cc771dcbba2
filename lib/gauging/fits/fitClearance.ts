import { type HoleZone, isoZone, type ShaftZone } from "./isoTolerances";

/** The least and the most diametral clearance of a class of fit; negative would be interference. */
export type FitClearance = Readonly<{ leastMm: number; mostMm: number }>;

/**
 * The diametral clearance that an ISO class of fit allows.
 *
 *   least = hole lower - shaft upper;  most = hole upper - shaft lower
 *
 * @param hole the hole's zone
 * @param shaft the shaft's zone
 * @param nominalMm the size the two share, over 0
 * @returns clearances in mm, or undefined when the table does not hold for that size
 * @example fitClearance("H7", "g6", 17) // { leastMm: 0.006, mostMm: 0.035 }
 * Source: ISO 286-1 for the definitions, ISO 286-2 for the zones.
 */
export function fitClearance(hole: HoleZone, shaft: ShaftZone, nominalMm: number): FitClearance | undefined {
  const [bore, pin] = [isoZone(hole, nominalMm), isoZone(shaft, nominalMm)];
  if (!bore || !pin) return undefined;
  return { leastMm: (bore.lowerUm - pin.upperUm) / 1000, mostMm: (bore.upperUm - pin.lowerUm) / 1000 };
}
