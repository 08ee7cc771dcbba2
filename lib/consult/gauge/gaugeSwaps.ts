import { plainName } from "../../diagnosis/swaps/plainName";
import { readSwaps, type SwapSuspect } from "../../diagnosis/swaps/readSwaps";
import type { SwapObservation } from "../../diagnosis/swaps/swapObservation";
import { swapSplits } from "../understand/swapSplits";
import type { GaugedSwaps } from "./gaugeAnswer";

/**
 * Reads swap tests of any interchangeable parts.
 *
 * @param swaps names as they shall come back; a part tried with itself is flagged and left out
 * @returns null where no swap is left
 */
export function gaugeSwaps(swaps: readonly SwapObservation[]): GaugedSwaps | null {
  const isItself = ({ a, b }: SwapObservation) => plainName(a) === plainName(b);
  const flags = swaps.filter(isItself).map(({ a }) => `no swap: ${a} in itself; name two different parts`);
  const tried = swaps.filter((swap) => !isItself(swap));
  if (tried.length === 0 && flags.length === 0) return null;
  const { suspects, diagnoses, nextSwap, unsuited, contradictions } = readSwaps(tried, {
    atHand: partsAtHand(tried),
  });
  const splits = swapSplits(suspects);
  const again = contradictions.map(
    ({ a, b, results }) => `${a} in ${b} was ${results.join(" and ")}: try it again`,
  );
  return {
    suspects: suspects.map(({ part, standing, freeIn, stuckIn }) => ({ part, standing, freeIn, stuckIn })),
    diagnoses,
    nextSwap: nextSwap ? [nextSwap.a, nextSwap.b] : null,
    unsuited,
    contradictions: again,
    splits,
    means: [
      ...suspectWords(suspects),
      ...splits,
      ...unsuited.map(([a, b]) => `${a} and ${b} each run free elsewhere: look at how the two fit together.`),
      nextSwap
        ? `To settle it: try ${nextSwap.a} in ${nextSwap.b}.`
        : "No further swap of these parts would tell more.",
    ],
    flags: [
      ...flags,
      ...again.map((words) => `contradiction: ${words}`),
      ...(isUndecided(suspects) ? ["undecided: the swaps so far do not settle on one part"] : []),
    ],
  };
}

/**
 * Parts that must be there too: where piston 2 was tried in casing 1, there is a piston 1. Only names with a number say so, and only
 * pairs of two kinds.
 */
function partsAtHand(tried: readonly Pick<SwapObservation, "a" | "b">[]): string[] {
  const numbered = tried.flatMap(({ a, b }) => {
    const [guest, host] = [numberedName(a), numberedName(b)];
    return guest && host && guest.kind !== host.kind ? [guest, host] : [];
  });
  const kinds = [...new Set(numbered.map(({ kind }) => kind))];
  const numbers = [...new Set(numbered.map(({ number }) => number))];
  return kinds.flatMap((kind) => numbers.map((number) => `${kind} ${number}`));
}

function numberedName(name: string): Readonly<{ kind: string; number: string }> | undefined {
  const match = /^(.*\S) (\d+)$/.exec(plainName(name));
  return match?.[1] && match[2] ? { kind: match[1], number: match[2] } : undefined;
}

/** One suspect settles it; several, or none though something bound, do not. */
function isUndecided(suspects: readonly SwapSuspect[]): boolean {
  const bound = suspects.some(({ stuckIn }) => stuckIn.length > 0);
  return bound && suspects.filter(({ standing }) => standing === "suspect").length !== 1;
}

const standingWords: Readonly<Record<SwapSuspect["standing"], string>> = {
  suspect: "under suspicion",
  possible: "could be",
  cleared: "cleared",
};

function suspectWords(suspects: readonly SwapSuspect[]): string[] {
  return (["suspect", "possible", "cleared"] as const).flatMap((standing) => {
    const parts = suspects.filter((suspect) => suspect.standing === standing).map(({ part }) => part);
    return parts.length > 0 ? [`${standingWords[standing]}: ${parts.join(", ")}.`] : [];
  });
}
