import type { Options } from "minisearch";
import type { CaseDocument } from "./caseDocument";
import { rememberWords } from "./rememberWords";
import { toTerm, wordPattern } from "./terms";

/** Words met in nearly every job; as search terms they only cost time. Common practice of text retrieval. */
const stopWords = new Set(
  "a an and are as at be but by for from had has have in is it its of on or that the then they this to was we were when with".split(
    " ",
  ),
);

/**
 * The one set of options by which the index of cases is built and asked.
 * A title or cause counts for more than a word in passing in the story; chosen: see tests/lib/text/searchCases.test.ts,
 * which ranks a small casebook and says why each hit stands where it does.
 */
export const searchOptions = {
  fields: ["title", "complaint", "causes", "lessons", "parts", "instrument", "story"],
  idField: "id",
  tokenize: (text: string) => text.match(wordPattern) ?? [],
  /** The term under which a word is indexed; null for one that is not. */
  processTerm: rememberWords((word) => (stopWords.has(word.toLowerCase()) ? null : toTerm(word))),
  searchOptions: {
    /** What a word counts in each field. */
    boost: { title: 3, complaint: 2, causes: 2, lessons: 1.5, parts: 1, instrument: 1.5, story: 1 },
    /** What a word only begun, or guessed at, counts beside one that was found as it was asked. */
    weights: { prefix: 0.4, fuzzy: 0.3 },
  },
} as const satisfies Options<CaseDocument> & Readonly<{ fields: readonly (keyof CaseDocument)[] }>;
