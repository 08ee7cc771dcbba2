import type { ReadingWords } from "../../vocabulary/readingWords";
import { type PreparedWords, splitTokens, type Token } from "./token";

const kinds = [
  "deniesWhatFollows",
  "deniesWhatPrecedes",
  "doubts",
  "longAgo",
  "beliefs",
  "endsScope",
  "others",
  "all",
  "joinsDenied",
  "sound",
  "affirms",
  "swapJoins",
] as const;

/** The kinds of small words that change how what stands around them is read. */
export type SequenceKind = (typeof kinds)[number] | "free" | "drags" | "sticks";

/** Each kind's sequences of terms, the longest first. */
export type Sequences = ReadonlyMap<SequenceKind, readonly (readonly string[])[]>;

/** A sequence found: its kind and the tokens from `first` to `last`, both inclusive. */
export type SequenceFound = Readonly<{ kind: SequenceKind; first: number; last: number }>;

/** Makes the small words of reading.yaml ready for finding. */
export function buildSequences(readingWords: ReadingWords, words: PreparedWords): Sequences {
  const terms = (phrases: readonly string[]) =>
    phrases
      .map((phrase) => splitTokens(phrase, words).map((token) => token.term))
      .filter((sequence) => sequence.length > 0)
      .sort((a, b) => b.length - a.length);
  const { free, drags, sticks } = readingWords.swapResults;
  return new Map<SequenceKind, readonly (readonly string[])[]>([
    ...kinds.map((kind) => [kind, terms(readingWords[kind])] as const),
    ["free", terms(free)],
    ["drags", terms(drags)],
    ["sticks", terms(sticks)],
  ]);
}

/**
 * Finds the sequences of some kinds among tokens, word for word; within a kind the longest wins and none overlap.
 *
 * @returns what was found, by kind and then in the order of the text
 */
export function findSequences(
  tokens: readonly Token[],
  sequences: Sequences,
  wanted: readonly SequenceKind[],
): SequenceFound[] {
  const present = new Set(tokens.map(({ term }) => term));
  return wanted.flatMap((kind) => {
    const taken = new Set<number>();
    const found: SequenceFound[] = [];
    for (const sequence of sequences.get(kind) ?? []) {
      if (!sequence.every((term) => present.has(term))) continue;
      for (let first = 0; first + sequence.length <= tokens.length; first++) {
        const fits = sequence.every((term, offset) => {
          const token = tokens[first + offset];
          return (
            token?.term === term &&
            !taken.has(first + offset) &&
            (offset === 0 || token.breakBefore === "none")
          );
        });
        if (!fits) continue;
        for (let offset = 0; offset < sequence.length; offset++) taken.add(first + offset);
        found.push({ kind, first, last: first + sequence.length - 1 });
      }
    }
    return found.sort((a, b) => a.first - b.first);
  });
}
