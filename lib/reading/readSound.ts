import { appliesTo } from "../vocabulary/appliesTo";
import type { Check } from "../vocabulary/check";
import type { FindingRead } from "./findingRead";
import { joinedMentions } from "./parts/joinedMentions";
import type { Mention } from "./parts/mentions";
import { partForCheck } from "./parts/partFit";
import type { Reader } from "./reader";
import type { Scopes } from "./words/scopes";
import type { Token } from "./words/token";

/**
 * Reads "spring fine", "others ok": a part named in a clause with a word that says it is as it should be, and nothing
 * else said about it. It becomes the normal outcome of the first check made for just that part.
 */
export function readSound(
  sentence: readonly Token[],
  mentions: readonly Mention[],
  scopes: Scopes,
  used: ReadonlySet<number>,
  { vocabulary, words }: Reader,
  instrument: string | undefined,
  text: string,
): Readonly<{ findings: readonly FindingRead[]; tokens: readonly number[] }>[] {
  const said = new Set<number>();
  return scopes.sound.flatMap((word) => {
    if (used.has(word.first) || said.has(scopes.clauseOf(word.first))) return [];
    const clause = scopes.clauseOf(word.first);
    const mention = mentions.findLast(
      ({ first, last }) => scopes.clauseOf(first) === clause && last < word.first,
    );
    if (!mention || scopes.deniedBy(word.first, word.last, used)) return [];
    const serves = (check: Check) =>
      check.normal !== undefined &&
      (check.reads === undefined || check.reads === "travel") &&
      check.parts[0] === mention.ref.part &&
      appliesTo(vocabulary, check.families, instrument);
    const check = [...vocabulary.checks.values()]
      .filter(serves)
      .sort((a, b) => (b.parts.length === a.parts.length ? 0 : a.parts.length - b.parts.length))[0];
    if (!check?.normal) return [];
    said.add(clause);
    const span = [sentence[mention.first]?.start ?? 0, sentence[word.last]?.end ?? 0] as const;
    const outcome = check.normal;
    const findings = [mention, ...joinedMentions(mention, mentions, sentence, words)].map(
      ({ ref }): FindingRead => ({
        check: check.id,
        outcome,
        part: partForCheck(vocabulary, check, ref),
        from: text.slice(...span),
        span,
        absent: false,
        doubtful: scopes.isDoubted(word.first) || scopes.isBelieved(word.first),
        ...(scopes.isBelieved(word.first) ? { how: "believed" } : {}),
      }),
    );
    const tokens = Array.from(
      { length: word.last - mention.first + 1 },
      (_, offset) => mention.first + offset,
    );
    return [{ findings, tokens }];
  });
}
