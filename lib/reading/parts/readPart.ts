import { type PartRef, parsePartRef } from "../../casebook/partRef";
import type { Reader } from "../reader";
import { splitTokens } from "../words/token";
import { findMentions } from "./mentions";

/**
 * Reads the name of one part: "piston 2", "2nd casing", "other valve", or bench words for them.
 *
 * @returns the part, or undefined where the words name none
 */
export function readPart(words: string, reader: Reader, instrument: string | undefined): PartRef | undefined {
  const written = parsePartRef(words.trim());
  if (written && reader.vocabulary.parts.has(written.part)) return written;
  const tokens = splitTokens(words, reader.words);
  const mentions = findMentions(tokens, reader, instrument);
  const named = mentions.find(({ ref }) => ref.place !== undefined || ref.others) ?? mentions[0];
  return named?.ref;
}
