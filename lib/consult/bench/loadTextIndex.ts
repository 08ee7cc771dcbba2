import type { Casebook } from "../../casebook/loadCasebook";
import { readSealed, writeSealed } from "../../casebook/snapshot/sealedFile";
import type { SnapshotPlace } from "../../casebook/snapshot/snapshotPlace";
import { vocabularyStamp } from "../../casebook/snapshot/vocabularyStamp";
import { fieldBoosts } from "../../text/fieldBoosts";
import { packTexts } from "../../text/packTexts";
import { recallTexts } from "../../text/recallTexts";
import { searchOptions } from "../../text/searchOptions";
import { buildTextIndex, type TextIndex } from "../../text/textIndex";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/** Raise it when the packed index is laid out otherwise. */
const format = 2;

/**
 * Gives the text index of a casebook: out of the snapshot of an earlier start as far as its cases are the same, built where
 * there is none. Where much had to be indexed the snapshot is written anew.
 *
 * @param place where the casebook's own snapshot lies; the index lies beside it. Without one nothing is read or written
 */
export function loadTextIndex(
  { cases, hashes }: Casebook,
  vocabulary: Vocabulary,
  place: SnapshotPlace | undefined,
): TextIndex {
  if (place === undefined || hashes === undefined) return buildTextIndex(cases.values(), vocabulary);
  const own = { ...place, path: `${place.path}.words` };
  const stamp = JSON.stringify([format, searchOptions.fields, fieldBoosts, vocabularyStamp(vocabulary)]);
  const bytes = readSealed(own.path, stamp);
  const recalled = bytes && recallTexts(bytes, cases, vocabulary, hashes);
  const index = recalled?.index ?? buildTextIndex(cases.values(), vocabulary);
  if ((recalled?.changed ?? cases.size) >= place.worthWriting)
    writeSealed(own, stamp, packTexts(index, hashes));
  return index;
}
