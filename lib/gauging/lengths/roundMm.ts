/** Grains in a millimetre: nine decimals, a millionth of a micrometre, far under anything a gauge can tell. */
const grainsPerMm = 1e9;

/**
 * Takes the dust of binary fractions off a length, so that `.6645 in` and `664.5 thou` are the same number
 * and two plugs can be compared for equality.
 *
 * @param mm a length or a difference of lengths in millimetres, of either sign
 * @returns the nearest whole 1e-9 mm, never -0
 * @example roundMm(0.1 + 0.2) // 0.3
 */
export function roundMm(mm: number): number {
  return Math.round(mm * grainsPerMm) / grainsPerMm + 0;
}
