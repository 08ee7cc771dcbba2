import type { SwapHow } from "../reading/readSwapHow";
import type { Check } from "../vocabulary/check";
import type { Vocabulary } from "../vocabulary/vocabulary";

/**
 * What a swap's result depended on, in words.
 *
 * @returns empty where it depended on nothing that was told; words that are no outcome stand as they were written
 * @example swapHowWords({ where: "two-thirds", turned: "half" }, vocabulary) // "two thirds of the way down, turned half round"
 */
export function swapHowWords({ where, way, turned }: SwapHow, { checks, words }: Vocabulary): string {
  const labelOf = (reads: Check["reads"], id: string) => {
    const check = [...checks.values()].find((one) => one.reads === reads);
    return check?.outcomes.find((outcome) => outcome.id === id)?.label.toLowerCase() ?? id;
  };
  return [
    ...(where === undefined ? [] : [labelOf("place", where)]),
    ...(way === undefined ? [] : [labelOf("way", way)]),
    ...(turned === undefined ? [] : [words.swapTurns[turned]?.[0] ?? turned]),
  ].join(", ");
}
