import { findEntry } from "./findEntry";
import { findText } from "./findText";
import type { WordPostings } from "./wordPostings";

/**
 * Takes a text out word for word, so that the postings are as if it had never been.
 *
 * @param texts the same strings with which it was added: which words a text has is not kept
 * @throws RangeError when the id is not there or a word was not in the text; the postings are then as before
 */
export function removeText(postings: WordPostings, id: string, texts: readonly string[]): void {
  const { boosts, ids, numberOf, free, terms, lengths, lengthTotals } = postings;
  const { number, found } = findText(postings, id, texts);
  for (const { list, key, field } of found) {
    const at = 2 * findEntry(list, key);
    list.entries.copyWithin(at, at + 2, 2 * list.length);
    list.length -= 1;
    list.textsByField[field] = (list.textsByField[field] ?? 0) - 1;
  }
  for (const list of new Set(found.map((one) => one.list))) list.texts -= 1;
  for (const { term, list } of found) if (list.length === 0) terms.delete(term);
  boosts.forEach((_, field) => {
    const key = number * boosts.length + field;
    lengthTotals[field] = (lengthTotals[field] ?? 0) - (lengths[key] ?? 0);
    lengths[key] = 0;
  });
  ids[number] = undefined;
  numberOf.delete(id);
  free.push(number);
}
