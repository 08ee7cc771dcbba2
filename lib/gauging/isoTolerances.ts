/** A tolerance zone: upper and lower deviation from the nominal size, in micrometres. */
export type ToleranceZone = Readonly<{ upperUm: number; lowerUm: number }>;

/** The nominal sizes that the table holds for: over the first, up to and including the second. */
export const isoSizesMm = { over: 10, upTo: 18 } as const;

/**
 * Hole zones of ISO 286-2 for nominal sizes over 10 up to 18 mm.
 *
 * Source: ISO 286-2, limit deviations for holes (set down from memory).
 */
export const isoHoles = {
  H6: { upperUm: 11, lowerUm: 0 },
  H7: { upperUm: 18, lowerUm: 0 },
} as const satisfies Record<string, ToleranceZone>;

/**
 * Shaft zones of ISO 286-2 for nominal sizes over 10 up to 18 mm.
 *
 * Source: ISO 286-2, limit deviations for shafts (set down from memory).
 */
export const isoShafts = {
  f7: { upperUm: -16, lowerUm: -34 },
  g5: { upperUm: -6, lowerUm: -14 },
  g6: { upperUm: -6, lowerUm: -17 },
  h6: { upperUm: 0, lowerUm: -11 },
} as const satisfies Record<string, ToleranceZone>;
