import type { PartRef } from "../../casebook/partRef";
import type { FindingRead } from "../findingRead";
import { checkBearsOn, partForCheck } from "../parts/partFit";
import type { Reader } from "../reader";
import type { Sentence } from "../sentence";
import type { ToldClause } from "./tellClauses";

/** How probable an outcome must be for a finding to be read from a clause's words. Chosen: see tests/reference/phrases. */
const leastShare = 0.35;

/**
 * Reads what no phrase took up: a clause that probably tells of one outcome, in other words than the handbook's. Nobody can be
 * sure of it, so it counts as said with doubt.
 *
 * @param used tokens that a finding took
 * @param carried the part that was spoken of last
 */
export function readByWords(
  { tokens, mentions, scopes }: Sentence,
  clauses: readonly ToldClause[],
  used: ReadonlySet<number>,
  { vocabulary }: Reader,
  carried: PartRef | undefined,
  text: string,
): Readonly<{ finding: FindingRead; tokens: readonly number[] }>[] {
  const isMentioned = (at: number) => mentions.some(({ first, last }) => at >= first && at <= last);
  return clauses.flatMap(({ tokens: clause, believed, outcomes }) => {
    const [best] = outcomes;
    const isTaken = clause.some((at) => used.has(at));
    const telling = clause.filter((at) => !isMentioned(at) && !tokens[at]?.filler && !scopes.isSmallWord(at));
    if (!best || isTaken || believed || telling.length === 0 || best.share < leastShare) return [];
    const { check, outcome } = best.meaning;
    const mention = mentions.find(
      ({ first, ref }) => clause.includes(first) && checkBearsOn(vocabulary, check, ref.part),
    );
    const part = mention?.ref ?? carried;
    const span = [tokens[clause[0] ?? 0]?.start ?? 0, tokens[clause.at(-1) ?? 0]?.end ?? 0] as const;
    const finding: FindingRead = {
      check: check.id,
      outcome: outcome.id,
      part: part && partForCheck(vocabulary, check, part),
      from: text.slice(...span),
      span,
      absent: false,
      doubtful: true,
      how: "words",
    };
    return [{ finding, tokens: clause }];
  });
}
