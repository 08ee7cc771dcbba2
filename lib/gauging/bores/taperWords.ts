import type { LengthWords } from "../lengths/lengthWords";
import type { Taper } from "./taper";

/**
 * Says in plain words how a bore tapers. A change under twice its standard error is not shown.
 *
 * @example taperWords({ kind: "too few depths", write: "more" }, lengthWords("mm")) // "No taper can be told: write more."
 */
export function taperWords(taper: Taper, { difference, depth, error: errorOf }: LengthWords): string {
  if (taper.kind === "too few depths") return `No taper can be told: write ${taper.write}.`;
  const { changeMm, standardErrorMm, fromDepthMm, toDepthMm } = taper;
  const error = standardErrorMm === null ? "" : `, give or take ${errorOf(standardErrorMm)}`;
  const way = `from ${depth(fromDepthMm)} to ${depth(toDepthMm)}`;
  if (standardErrorMm !== null && Math.abs(changeMm) < 2 * standardErrorMm)
    return `No taper is shown ${way}: the mean moves by ${difference(changeMm)}${error}.`;
  return `The mean ${changeMm < 0 ? "narrows" : "widens"} by ${difference(changeMm)}${error} ${way}.`;
}
