import type { LengthWords } from "../lengths/lengthWords";
import type { Splay } from "./splay";

/** Three thou: legs that run side by side to within a few thou are called parallel. Common practice; the number is chosen. */
const parallelWithinMm = 0.0762;

/**
 * Says in plain words how two legs stand to one another.
 *
 * @returns a sentence each; the first is the verdict
 * @example splayWords({ kind: "too few places", write: "more" }, lengthWords("mm")) // ["No splay can be told: write more."]
 */
export function splayWords(splay: Splay, { difference, depth }: LengthWords): readonly string[] {
  if (splay.kind === "too few places") return [`No splay can be told: write ${splay.write}.`];
  const { leastMm, mostMm, fromMm, toMm, bow } = splay;
  const way = `from ${depth(fromMm)} to ${depth(toMm)}`;
  const by = (low: number, high: number) =>
    low === high ? `by ${difference(low)}` : `by ${difference(low)} to ${difference(high)}`;
  const half = (mm: number) => difference(mm / 2);
  const verdict = () => {
    if (leastMm > parallelWithinMm)
      return `The legs spread ${by(leastMm, mostMm)} ${way}: ${half((leastMm + mostMm) / 2)} a leg, if both lean alike.`;
    if (mostMm < -parallelWithinMm)
      return `The legs are pinched ${by(-mostMm, -leastMm)} ${way}: ${half((leastMm + mostMm) / 2)} a leg, if both lean alike.`;
    if (leastMm >= -parallelWithinMm && mostMm <= parallelWithinMm)
      return `Parallel ${way}, to within ${difference(Math.max(-leastMm, mostMm))}. A twist does not show here: lay them on a flat plate.`;
    return `Not decided: from ${sided(leastMm, difference)} to ${sided(mostMm, difference)}. Measure more exactly.`;
  };
  const bowed =
    bow && (bow.leastMm > parallelWithinMm || bow.mostMm < -parallelWithinMm)
      ? [
          `At ${depth(bow.placeMm)} they stand ${difference((bow.leastMm + bow.mostMm) / 2)} ${bow.leastMm > 0 ? "wider" : "nearer"} than the line from end to end: a leg is bowed there. Sight along each before bending.`,
        ]
      : [];
  return [verdict(), ...bowed];
}

const sided = (mm: number, difference: LengthWords["difference"]) =>
  `${difference(mm)} ${mm < 0 ? "pinched" : "spread"}`;
