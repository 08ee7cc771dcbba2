import { countWords } from "./countWords";
import { findEntry } from "./findEntry";
import type { TermPostings, WordPostings } from "./wordPostings";

/**
 * Takes a text out word for word, so that the postings are as if it had never been.
 *
 * @param texts the same strings with which it was added: which words a text has is not kept
 * @throws RangeError when the id is not there or a word was not in the text; the postings are then as before
 */
export function removeText(postings: WordPostings, id: string, texts: readonly string[]): void {
  const { boosts, ids, numberOf, free, terms, lengths, lengthTotals } = postings;
  const number = numberOf.get(id);
  if (number === undefined) {
    throw new RangeError(`a text to take out must be there; got "${id}"; look its id up again`);
  }
  const found: { term: string; list: TermPostings; key: number; field: number }[] = [];
  texts.map(countWords).forEach((counted, field) => {
    const key = number * boosts.length + field;
    for (const [term, count] of counted.terms) {
      const list = terms.get(term);
      if (list === undefined || !hasEntry(list, key, count)) {
        throw new RangeError(
          `a text must be taken out as it was added; got "${term}" in "${id}"; keep its former version`,
        );
      }
      found.push({ term, list, key, field });
    }
  });
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

function hasEntry(list: TermPostings, key: number, count: number): boolean {
  const at = findEntry(list, key);
  return at < list.length && list.entries[2 * at] === key && list.entries[2 * at + 1] === count;
}
