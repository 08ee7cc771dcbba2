import type { WordPostings } from "@/lib/text/postings/wordPostings";

/** What postings say, whatever numbers the texts were given and however much room there is. */
export const toldBy = (postings: WordPostings) => ({
  terms: Object.fromEntries(
    [...postings.terms].sort().map(([term, { entries, length, texts, textsByField }]) => {
      const fields = postings.boosts.length;
      const places = Array.from({ length }, (_, at) => {
        const key = entries[2 * at] ?? -1;
        return [postings.ids[Math.floor(key / fields)], key % fields, entries[2 * at + 1]];
      });
      return [term, { texts, textsByField: [...textsByField], places: places.map(String).sort() }];
    }),
  ),
  totals: [...postings.lengthTotals],
  lengths: [...postings.numberOf]
    .sort()
    .map(([id, number]) => [
      id,
      ...postings.boosts.map((_, field) => postings.lengths[number * postings.boosts.length + field]),
    ]),
});
