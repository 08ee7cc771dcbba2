import type { Options } from "minisearch";
import type { CaseDocument } from "./caseDocument";
import { splitWords, toTerm } from "./terms";

/** Words met in nearly every job; as search terms they only cost time. Common practice of text retrieval. */
const stopWords = new Set(
  "a an and are as at be but by for from had has have in is it its of on or that the then they this to was we were when with".split(
    " ",
  ),
);

/**
 * The one set of options by which the index of cases is built, loaded and asked.
 * A title or cause counts for more than a word in passing in the story; chosen: see tests/lib/text/searchCases.test.ts,
 * which ranks a small casebook and says why each hit stands where it does.
 */
export const searchOptions = {
  fields: ["title", "complaint", "causes", "lessons", "parts", "instrument", "story"],
  idField: "id",
  tokenize: (text: string) => splitWords(text).map((word) => word.text),
  processTerm: (word: string) => (stopWords.has(word.toLowerCase()) ? null : toTerm(word)),
  searchOptions: {
    boost: { title: 3, causes: 2, complaint: 2, lessons: 1.5, instrument: 1.5 },
    weights: { prefix: 0.4, fuzzy: 0.3 },
  },
} satisfies Options<CaseDocument>;
