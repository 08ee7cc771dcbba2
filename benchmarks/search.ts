import type { Case } from "@/lib/casebook/caseFile";
import type { Casebook } from "@/lib/casebook/loadCasebook";
import { searchCases } from "@/lib/text/searchCases";
import { fillSearchIndex } from "@/lib/text/searchIndex";
import { searchOptions } from "@/lib/text/searchOptions";
import type { TextIndex } from "@/lib/text/textIndex";
import { misspell } from "./corpusWords";
import { measure, timeOnce } from "./measure";
import type { Random } from "./random";
import { type Result, showSeconds, showTimings } from "./result";

const perKind = 10;
const rounds = 2;
const warmUp = 3;
const shortestWord = 4;

/** Fills the search index, as the server does after its start between whatever else there is to do. */
export const benchFillSearch = (text: TextIndex): Result => ({
  work: "fill the search index, after the start",
  shown: showSeconds(timeOnce(() => fillSearchIndex(text.search))),
});

/** Searches as people do: one word up to three, a word only begun, a word with a slip, and no word at all. */
export function benchSearch(
  casebook: Casebook,
  text: TextIndex,
  strangers: readonly Case[],
  random: Random,
): Result[] {
  const kinds: Readonly<Record<string, (words: readonly string[]) => string>> = {
    "one word": ([a = ""]) => a,
    "two words": ([a, b]) => `${a} ${b}`,
    "three words": ([a, b, c]) => `${a} ${b} ${c}`,
    "a word and one begun": ([a, b = ""]) => `${a} ${b.slice(0, 3)}`,
    "a word and one with a slip": ([a, b = ""]) => `${misspell(b, random)} ${a}`,
  };
  const time = (asked: readonly string[], runs: number) =>
    measure(
      (number) => searchCases(casebook, text, { words: asked[number % asked.length] ?? "", choice: {} }),
      { runs, warmUp },
    );
  const timed = Object.entries(kinds).map(([kind, lay]) => {
    const asked = Array.from({ length: perKind }, (_, at) => lay(pickWords(strangers[at], random)));
    return { kind, timings: time(asked, rounds * perKind) };
  });
  return [
    { work: "search", shown: showTimings(timed.flatMap(({ timings }) => timings)) },
    ...timed.map(({ kind, timings }) => ({ work: `of which: ${kind}`, shown: showTimings(timings) })),
    { work: "leaf through all cases, no words", shown: showTimings(time([""], perKind)) },
  ];
}

/** Three different words that somebody would search for, out of one case that the casebook does not hold. */
function pickWords(kase: Case | undefined, random: Random): string[] {
  const words = searchOptions
    .tokenize([kase?.title, kase?.complaint, kase?.lessons.join(" ")].join(" "))
    .filter((word) => word.length >= shortestWord && searchOptions.processTerm(word) !== null)
    .map((word) => word.toLowerCase());
  return random.shuffle([...new Set(words)]).slice(0, 3);
}
