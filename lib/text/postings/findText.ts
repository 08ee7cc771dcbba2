import { countWords } from "./countWords";
import { findEntry } from "./findEntry";
import type { TermPostings, WordPostings } from "./wordPostings";

/** A term that a text has in a field, with where that is told. */
export type FoundTerm = Readonly<{ term: string; list: TermPostings; key: number; field: number }>;

/**
 * Finds a text word for word.
 *
 * @param texts the same strings with which it was added
 * @returns its number and its terms
 * @throws RangeError when the id is not there or a word was not in the text
 */
export function findText(
  { boosts, numberOf, terms }: WordPostings,
  id: string,
  texts: readonly string[],
): Readonly<{ number: number; found: readonly FoundTerm[] }> {
  const number = numberOf.get(id);
  if (number === undefined) {
    throw new RangeError(`a text to take out must be there; got "${id}"; look its id up again`);
  }
  const found: FoundTerm[] = [];
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
  return { number, found };
}

function hasEntry(list: TermPostings, key: number, count: number): boolean {
  const at = findEntry(list, key);
  return at < list.length && list.entries[2 * at] === key && list.entries[2 * at + 1] === count;
}
