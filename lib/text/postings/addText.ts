import { type CountedWords, countWords } from "./countWords";
import { findEntry } from "./findEntry";
import type { TermPostings, WordPostings } from "./wordPostings";

/** Room for two keys: most terms of a large casebook stand in one or two texts. */
const firstRoom = 4;

/**
 * Adds a text, in time that grows with its own length; only a number given out again moves entries behind its own.
 *
 * @param texts one string a field
 * @returns the text's number
 * @throws RangeError when the id is there already, or the fields are not as many as the postings have
 */
export function addText(postings: WordPostings, id: string, texts: readonly string[]): number {
  const { boosts, ids, numberOf, free, lengthTotals } = postings;
  if (numberOf.has(id)) {
    throw new RangeError(`a text's id must be new; got "${id}" again; take the earlier text out first`);
  }
  if (texts.length !== boosts.length) {
    throw new RangeError(
      `a text must have ${boosts.length} fields; got ${texts.length}; give one string each`,
    );
  }
  const number = free.pop() ?? ids.length;
  ids[number] = id;
  numberOf.set(id, number);
  makeRoom(postings, (number + 1) * boosts.length);
  const holding = new Set<TermPostings>();
  texts.map(countWords).forEach(({ different, terms }: CountedWords, field) => {
    const key = number * boosts.length + field;
    postings.lengths[key] = different;
    lengthTotals[field] = (lengthTotals[field] ?? 0) + different;
    for (const [term, count] of terms) {
      const list = postings.terms.get(term) ?? startList(postings, term);
      putEntry(list, key, count);
      list.textsByField[field] = (list.textsByField[field] ?? 0) + 1;
      holding.add(list);
    }
  });
  for (const list of holding) list.texts += 1;
  return number;
}

function makeRoom(postings: WordPostings, keys: number): void {
  if (keys <= postings.lengths.length) return;
  const wider = new Uint32Array(2 * keys);
  wider.set(postings.lengths);
  postings.lengths = wider;
}

function startList({ terms, boosts }: WordPostings, term: string): TermPostings {
  const list = { entries: new Int32Array(firstRoom), length: 0, texts: 0, textsByField: boosts.map(() => 0) };
  terms.set(term, list);
  return list;
}

function putEntry(list: TermPostings, key: number, count: number): void {
  const at = 2 * findEntry(list, key);
  const end = 2 * list.length;
  if (end + 2 > list.entries.length) {
    const wider = new Int32Array(2 * list.entries.length);
    wider.set(list.entries);
    list.entries = wider;
  }
  if (at < end) list.entries.copyWithin(at + 2, at, end);
  list.entries[at] = key;
  list.entries[at + 1] = count;
  list.length += 1;
}
