import type { SwapHow } from "../../reading/readSwapHow";
import { checkThatReads } from "../../vocabulary/checkThatReads";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/**
 * What a swap's result depended on, in words.
 *
 * @returns empty where it depended on nothing that was told; words that are no outcome stand as they were written
 * @example swapHowWords({ where: "two-thirds", turned: "half" }, vocabulary) // "two thirds of the way down, turned half round"
 */
export function swapHowWords({ where, way, turned }: SwapHow, vocabulary: Vocabulary): string {
  const labelOf = (reads: "place" | "way", id: string) =>
    checkThatReads(vocabulary, reads)
      ?.outcomes.find((outcome) => outcome.id === id)
      ?.label.toLowerCase() ?? id;
  return [
    ...(where === undefined ? [] : [labelOf("place", where)]),
    ...(way === undefined ? [] : [labelOf("way", way)]),
    ...(turned === undefined ? [] : [vocabulary.words.swapTurns[turned]?.[0] ?? turned]),
  ].join(", ");
}
