import { regularizedBeta } from "../../estimate/regularizedBeta";

/**
 * The chance of a Student t further from 0 than one that was seen, on either side.
 *
 *   P(|T| > t) = I_x(v / 2, 1 / 2),  x = v / (v + t^2)
 *
 * @param t any number, infinite too
 * @param degrees of freedom, above 0
 * @returns 0..1, falling in |t|
 * @throws RangeError when the degrees of freedom are not above 0
 * @example tailOfT(0, 3) // 1
 * Source: DLMF 8.17; Abramowitz & Stegun 26.7.
 */
export function tailOfT(t: number, degrees: number): number {
  if (!Number.isFinite(t)) return 0;
  return regularizedBeta(degrees / (degrees + t * t), degrees / 2, 0.5);
}
