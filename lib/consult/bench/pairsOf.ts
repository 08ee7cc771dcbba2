/**
 * Lists every two terms that stand side by side, once each: "pad torn" tells more than "pad" and "torn" do.
 *
 * Source: word pairs beside single words, Wang & Manning 2012.
 */
export const pairsOf = (terms: readonly string[]): Set<string> =>
  new Set(terms.slice(1).map((term, at) => `${terms[at]} ${term}`));
