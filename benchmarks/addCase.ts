import type { Case } from "@/lib/casebook/caseFile";
import { type Bench, takeInCase } from "@/lib/consult/bench/bench";
import { searchText } from "@/lib/text/searchText";
import { measure } from "./measure";
import { type Result, showTimings } from "./result";

/**
 * Takes new cases in and searches for each by a word that no other has; then puts every one in its own place again.
 * The bench that was given must be dropped afterwards.
 *
 * @throws RangeError when a case taken in is not found at once
 */
export function benchAddCase(bench: Bench, strangers: readonly Case[]): Result[] {
  const fresh = strangers.map((kase, at) => ({ ...kase, title: `${kase.title} ${wordOf(at)}` }));
  let current = bench;
  const find = (at: number) => {
    const [first] = searchText(current.text, wordOf(at));
    if (first?.id === fresh[at]?.id) return;
    throw new RangeError(`a case taken in must be found; got ${first?.id ?? "none"}; mend takeInCase`);
  };
  const take = (at: number) => {
    const kase = fresh[at];
    if (kase) current = takeInCase(current, kase);
  };
  const takeAndFind = (at: number) => {
    take(at);
    find(at);
  };
  const once = { runs: fresh.length, warmUp: 0 };
  return [
    { work: "take a new case in and find it by search", shown: showTimings(measure(takeAndFind, once)) },
    { work: "put a case in its own place again", shown: showTimings(measure(take, once)) },
  ];
}

/** A word of letters only, so that it is split and stemmed like any other. */
const wordOf = (at: number) =>
  `zquor${[...String(at)].map((digit) => "bcdfghjklm"[Number(digit)]).join("")}x`;
