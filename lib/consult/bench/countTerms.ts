import { type PreparedWords, tellingTerms } from "../../reading/words/token";

/**
 * Counts the telling words of a text, in the form in which they are matched: short forms written out, fillers left out.
 *
 * @param weight what each word counts
 */
export function countTerms(
  texts: Iterable<readonly [text: string, weight: number]>,
  words: PreparedWords,
): Map<string, number> {
  const terms = new Map<string, number>();
  for (const [text, weight] of texts) {
    for (const term of tellingTerms(text, words)) terms.set(term, (terms.get(term) ?? 0) + weight);
  }
  return terms;
}
