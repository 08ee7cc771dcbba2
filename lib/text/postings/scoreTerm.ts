import { scoringRoom } from "./scoringRoom";
import type { WordPostings } from "./wordPostings";

/** BM25+: how soon a word's repetitions count for little, how far a long field is held against a text, and the floor of a match. */
const bm25 = { k: 1.2, b: 0.7, d: 0.5 } as const;

/** The texts that hold a term, by rising number, with what the term gives to each; views of the scoring room. */
export type TermScores = Readonly<{ numbers: Int32Array; scores: Float64Array }>;

/**
 * Scores the texts by one term: over the fields that hold it, the sum of
 * boost idf (d + f (k + 1) / (f + k (1 - b + b L / M))), idf = ln(1 + (N - n + .5) / (n + .5)), with N texts, n of them
 * with the term in the field, f its count there, L the number of different words of the field, M their mean over all texts;
 * k = 1.2, b = .7, d = .5.
 *
 * @returns the texts that hold the term in any field; none where it is unknown; scores over 0; until the next term is scored
 * Source: Lv & Zhai 2011, Lower-bounding term frequency normalization, section 4 (BM25+); the number of DIFFERENT words as
 * length is a departure from it.
 */
export function scoreTerm(postings: WordPostings, term: string): TermScores {
  const { boosts, lengths, lengthTotals, numberOf } = postings;
  const { numbers, added } = scoringRoom(postings);
  const list = postings.terms.get(term);
  if (list === undefined) return { numbers: numbers.subarray(0, 0), scores: added.subarray(0, 0) };
  const fields = boosts.length;
  const idf = Float64Array.from(list.textsByField, (holding) =>
    Math.log(1 + (numberOf.size - holding + 0.5) / (holding + 0.5)),
  );
  const means = Float64Array.from(lengthTotals, (total) => total / numberOf.size);
  const { entries, length } = list;
  const { k, b, d } = bm25;
  let at = -1;
  let last = -1;
  let sum = 0;
  for (let entry = 0; entry < 2 * length; entry += 2) {
    const key = entries[entry] ?? 0;
    const count = entries[entry + 1] ?? 0;
    const number = Math.floor(key / fields);
    const field = key - number * fields;
    if (number !== last) {
      at += 1;
      last = number;
      numbers[at] = number;
      sum = 0;
    }
    const relativeLength = (lengths[key] ?? 0) / (means[field] ?? 1);
    const weight = d + (count * (k + 1)) / (count + k * (1 - b + b * relativeLength));
    sum += (boosts[field] ?? 1) * ((idf[field] ?? 0) * weight);
    added[at] = sum;
  }
  return { numbers: numbers.subarray(0, list.texts), scores: added.subarray(0, list.texts) };
}
