import { type PreparedWords, tellingTerms } from "../../reading/words/token";

/**
 * Lists every two telling words of a text that stand side by side, once each: "pad torn" tells more than "pad" and "torn" do.
 *
 * Source: word pairs beside single words, Wang & Manning 2012.
 */
export function pairsOf(text: string, words: PreparedWords): Set<string> {
  const terms = tellingTerms(text, words);
  return new Set(terms.slice(1).map((term, at) => `${terms[at]} ${term}`));
}
