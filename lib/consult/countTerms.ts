import { type PreparedWords, tellingTerms } from "../reading/token";

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

/**
 * Lists every two telling words of a text that stand side by side, once each: "pad torn" tells more than "pad" and "torn" do.
 *
 * Source: word pairs beside single words, Wang & Manning 2012.
 */
export function pairsOf(text: string, words: PreparedWords): Set<string> {
  const terms = tellingTerms(text, words);
  return new Set(terms.slice(1).map((term, at) => `${terms[at]} ${term}`));
}
