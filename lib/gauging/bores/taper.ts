/** A bore's mean size at one depth, with its standard error where that is known. */
export type SizeAtDepth = Readonly<{ depthMm: number; sizeMm: number; standardErrorMm: number | null }>;

/** How a bore widens or narrows along its depth. */
export type Taper =
  | Readonly<{ kind: "too few depths"; write: string }>
  | Readonly<{
      kind: "fitted";
      /** Size gained for each mm of depth; negative narrows downward. */
      slope: number;
      fromDepthMm: number;
      toDepthMm: number;
      /** Slope times the way between the two. */
      changeMm: number;
      /** Of the change; null where a size came without its own. */
      standardErrorMm: number | null;
      /** Size less the line at each depth, in the order given: a bulge or a waist shows as one that stands out. */
      residualsMm: readonly number[];
    }>;

/**
 * Fits a straight line to a bore's size along its depth.
 *
 *   size = size0 + slope depth;  var(slope) = sum (x - mean x)^2 s^2 / (sum (x - mean x)^2)^2
 *
 * @param sizes in any order; two depths or more that differ
 * @returns the line, or `too few depths`
 * @throws RangeError when a depth or a size is not finite
 * @example taper([{ depthMm: 0, sizeMm: 17, standardErrorMm: null }]).kind // "too few depths"
 * Source: ordinary least squares; the error carried from the sizes' own (JCGM 100, 5.1).
 */
export function taper(sizes: readonly SizeAtDepth[]): Taper {
  for (const { depthMm, sizeMm } of sizes)
    if (!(Number.isFinite(depthMm) && Number.isFinite(sizeMm)))
      throw new RangeError(`a depth and a size must be finite; got ${depthMm}, ${sizeMm} mm; measure again`);
  const depths = sizes.map(({ depthMm }) => depthMm);
  const [fromDepthMm, toDepthMm] = [Math.min(...depths), Math.max(...depths)];
  if (sizes.length < 2 || fromDepthMm === toDepthMm)
    return { kind: "too few depths", write: "readings at two depths or more, each with its depth" };
  const mean = (values: readonly number[]) => values.reduce((sum, value) => sum + value, 0) / values.length;
  const centreMm = mean(depths);
  const levelMm = mean(sizes.map(({ sizeMm }) => sizeMm));
  const spread = sizes.reduce((sum, { depthMm }) => sum + (depthMm - centreMm) ** 2, 0);
  const slope =
    sizes.reduce((sum, { depthMm, sizeMm }) => sum + (depthMm - centreMm) * (sizeMm - levelMm), 0) / spread;
  const variance = sizes.reduce<number | null>(
    (sum, { depthMm, standardErrorMm }) =>
      sum === null || standardErrorMm === null
        ? null
        : sum + ((depthMm - centreMm) * standardErrorMm) ** 2 / spread ** 2,
    0,
  );
  const wayMm = toDepthMm - fromDepthMm;
  return {
    kind: "fitted",
    slope,
    fromDepthMm,
    toDepthMm,
    changeMm: slope * wayMm,
    standardErrorMm: variance === null ? null : Math.sqrt(variance) * wayMm,
    residualsMm: sizes.map(({ depthMm, sizeMm }) => sizeMm - levelMm - slope * (depthMm - centreMm)),
  };
}
