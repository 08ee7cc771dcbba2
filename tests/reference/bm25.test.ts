import MiniSearch from "minisearch";
import { describe, expect, it } from "vitest";

/**
 * BM25+ as the text index counts it, worked by hand:
 * idf = ln(1 + (N - n + 0.5) / (n + 0.5)), of N texts, n with the term;
 * term score = idf (d + f (k + 1) / (f + k (1 - b + b L / M))), k = 1.2, b = 0.7, d = 0.5, f the term's count in the text,
 * L the number of DIFFERENT terms of the text, M their mean over the texts; the sum is multiplied by the number of query
 * terms found.
 * Source: Lv & Zhai 2011, Lower-bounding term frequency normalization, section 4 (BM25+); constants and the two departures
 * (different terms as length, the factor) as MiniSearch 7.2 documents and counts them.
 */
const texts = [
  { id: 1, text: "valve sticks when hot" },
  { id: 2, text: "third valve leaks air leaks badly" },
  { id: 3, text: "pad leaks low note" },
  { id: 4, text: "slide sticks" },
];
const index = new MiniSearch({ fields: ["text"] });
index.addAll(texts);

/** The same from the formula alone. */
function plainScore(query: string, id: number): number {
  const termsOf = (text: string) => text.split(" ");
  const lengths = texts.map(({ text }) => new Set(termsOf(text)).size);
  const mean = lengths.reduce((sum, length) => sum + length, 0) / texts.length;
  const own = termsOf(texts.find((text) => text.id === id)?.text ?? "");
  const found = termsOf(query).filter((term) => own.includes(term));
  const scores = found.map((term) => {
    const holding = texts.filter(({ text }) => termsOf(text).includes(term)).length;
    const idf = Math.log(1 + (texts.length - holding + 0.5) / (holding + 0.5));
    const count = own.filter((word) => word === term).length;
    return idf * (0.5 + (count * 2.2) / (count + 1.2 * (0.3 + (0.7 * new Set(own).size) / mean)));
  });
  return scores.reduce((sum, score) => sum + score, 0) * found.length;
}

describe("BM25+", () => {
  it.each([
    ["valve leaks", 2, 4.368858],
    ["valve leaks", 1, 1.022515],
    ["valve leaks", 3, 1.022515],
    ["sticks", 4, 1.190005],
    ["sticks", 1, 1.022515],
  ])("of '%s' scores text %d at %d", (query, id, score) => {
    const hit = index.search(query).find((result) => result.id === id);
    expect(Math.abs((hit?.score ?? 0) - score)).toBeLessThan(1e-6);
    expect(Math.abs(plainScore(query, id) - score)).toBeLessThan(1e-6);
  });

  it("finds no text without a term of the query", () => {
    expect(index.search("valve leaks").map(({ id }) => id)).toHaveLength(3);
    expect(index.search("sticks").map(({ id }) => id)).toEqual([4, 1]);
  });
});
