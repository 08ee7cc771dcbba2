import { z } from "zod";
import type { Case } from "../casebook/caseFile";
import { partOf } from "../casebook/lateMap";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { caseTexts } from "./caseTexts";
import { fieldBoosts } from "./fieldBoosts";
import { addText } from "./postings/addText";
import { dropTexts } from "./postings/dropTexts";
import { findText } from "./postings/findText";
import { unpackPostings } from "./postings/unpackPostings";
import type { WordPostings } from "./postings/wordPostings";
import { startSearchIndex } from "./searchIndex";
import type { TextIndex } from "./textIndex";

/** How many cases are held word for word against what is indexed of them. Chosen: some ten milliseconds. */
const samples = 25;
const lineEnd = 10;
/** By number; null for a case that was given none. */
const marksSchema = z.array(z.string().nullable());

/** A text index recalled, and how many cases had to be taken out or indexed anew. */
export type RecalledTexts = Readonly<{ index: TextIndex; changed: number }>;

/**
 * Brings back a text index that `packTexts` laid out, for the cases as they are now: what has gone or has another mark is
 * taken out, what is new or has another mark is indexed.
 *
 * @param vocabulary the one by which the cases were indexed
 * @param marks by id what stands for a case as it is now
 * @returns the index that `buildTextIndex` would give; undefined where the bytes are none of that kind, or say otherwise of
 * some cases than indexing them would today
 */
export function recallTexts(
  bytes: Uint8Array,
  cases: ReadonlyMap<string, Case>,
  vocabulary: Vocabulary,
  marks: ReadonlyMap<string, string>,
): RecalledTexts | undefined {
  try {
    const end = bytes.indexOf(lineEnd);
    const known = marksSchema.parse(JSON.parse(new TextDecoder().decode(bytes.subarray(0, end))));
    const words = unpackPostings(bytes.subarray(end + 1));
    if (String(words.boosts) !== String(fieldBoosts)) return undefined;
    const isSame = (id: string, number: number) => (known[number] ?? null) === marks.get(id) && cases.has(id);
    const stale = [...words.numberOf].flatMap(([id, number]) => (isSame(id, number) ? [] : [id]));
    dropTexts(words, stale);
    checkSamples(words, cases, vocabulary);
    const fresh = partOf(cases, (id) => !words.numberOf.has(id));
    for (const [id, kase] of fresh) addText(words, id, caseTexts(kase, vocabulary));
    return {
      index: { words, search: startSearchIndex(cases, vocabulary) },
      changed: Math.max(stale.length, fresh.size),
    };
  } catch (error) {
    // Bytes of another kind, or a case that would be indexed otherwise today.
    if (error instanceof Error) return undefined;
    throw error;
  }
}

/**
 * Looks for a few cases word for word.
 *
 * @throws RangeError when one of them is not indexed as it would be today
 */
function checkSamples(words: WordPostings, cases: ReadonlyMap<string, Case>, vocabulary: Vocabulary): void {
  const ids = [...words.numberOf.keys()];
  const stride = Math.max(1, Math.ceil(ids.length / samples));
  for (const id of ids.filter((_, at) => at % stride === 0)) {
    const kase = cases.get(id);
    if (kase) findText(words, id, caseTexts(kase, vocabulary));
  }
}
