/** Angles closer than this say nothing different about a bore, and a fit through them would blow up its noise. Chosen. */
const sameAngleDeg = 5;

/**
 * Counts the angles that are truly different, and finds the widest stretch without any.
 *
 * @param anglesDeg any finite angles in degrees
 * @param periodDeg 360 for radii, 180 for diameters (a diameter at 200 degrees is the one at 20)
 * @returns how many can be picked, going round, that lie 5 degrees or more apart, and the widest gap between neighbours in degrees;
 * none and a full turn for no angle
 * @example spreadOfAngles([0, 60, 180], 180) // { distinct: 2, widestGapDeg: 120 }
 */
export function spreadOfAngles(
  anglesDeg: readonly number[],
  periodDeg: number,
): Readonly<{ distinct: number; widestGapDeg: number }> {
  const turned = anglesDeg
    .map((deg) => ((deg % periodDeg) + periodDeg) % periodDeg)
    .sort((one, other) => one - other);
  const first = turned[0];
  if (first === undefined) return { distinct: 0, widestGapDeg: periodDeg };
  let [distinct, last, widestGapDeg] = [1, first, 0];
  for (const [index, deg] of turned.entries()) {
    widestGapDeg = Math.max(widestGapDeg, (turned[index + 1] ?? first + periodDeg) - deg);
    if (deg - last < sameAngleDeg || first + periodDeg - deg < sameAngleDeg) continue;
    distinct += 1;
    last = deg;
  }
  return { distinct, widestGapDeg };
}
