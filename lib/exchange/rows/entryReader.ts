import { formatPartRef } from "../../casebook/partRef";
import { nearestWord } from "../../document/nearestWord";
import { readPart } from "../../reading/parts/readPart";
import type { Reader } from "../../reading/reader";
import { readInstrument } from "../../reading/readInstrument";
import { normalWords } from "../cells/normalWords";

/** Reads cells that name entries of the vocabulary; a job book has the same words over and over, so each is read once. */
export type EntryReader = Readonly<{
  instrument: (words: string) => string | undefined;
  part: (words: string, instrument: string) => string | undefined;
  cause: (words: string) => string | undefined;
  /** The known cause that some words come nearest to, for a person to look at. */
  nearestCause: (words: string) => string | undefined;
}>;

/** Makes a reader of cells from the bench's reader. Causes are taken by id, label or synonym only, never by likeness. */
export function entryReader(reader: Reader): EntryReader {
  const causes = new Map<string, string>();
  for (const { id, label, synonyms } of reader.vocabulary.causes.values())
    for (const name of [id, label, ...synonyms].map(normalWords)) if (!causes.has(name)) causes.set(name, id);
  return {
    instrument: remember((words) => readInstrument(words, reader)),
    part: (words, instrument) => {
      const ref = readPart(words, reader, instrument);
      return ref && formatPartRef(ref);
    },
    cause: (words) => causes.get(normalWords(words)),
    nearestCause: remember((words) => {
      const near = nearestWord(normalWords(words), causes.keys());
      return near === undefined ? undefined : causes.get(near);
    }),
  };
}

function remember(read: (words: string) => string | undefined): (words: string) => string | undefined {
  const known = new Map<string, string | undefined>();
  return (words) => {
    if (!known.has(words)) known.set(words, read(words));
    return known.get(words);
  };
}
