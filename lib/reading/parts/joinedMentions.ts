import type { PreparedWords, Token } from "../words/token";
import type { Mention } from "./mentions";

/** "1st and 3rd fine": numbered mentions joined to one by small words alone share what is said of it. */
export function joinedMentions(
  mention: Mention | undefined,
  mentions: readonly Mention[],
  sentence: readonly Token[],
  words: PreparedWords,
): Mention[] {
  if (mention?.ref.place === undefined) return [];
  const joined: Mention[] = [];
  let { first } = mention;
  for (const other of mentions.toReversed()) {
    if (other.last >= first || other.ref.place === undefined) continue;
    const between = sentence.slice(other.last + 1, first);
    const close =
      between.length <= 2 &&
      between.every((token) => token.filler || words.joins.has(token.text.toLowerCase()));
    if (!close || other.ref.part !== mention.ref.part) break;
    joined.push(other);
    first = other.first;
  }
  return joined;
}
