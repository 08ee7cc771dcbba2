import type { PartRef } from "../../casebook/partRef";
import type { FindingRead } from "../findingRead";
import type { Mention } from "../parts/mentions";
import { checkBearsOn, partForCheck } from "../parts/partFit";
import type { Reader } from "../reader";
import type { Scopes } from "../words/scopes";
import type { Token } from "../words/token";
import { tellingTerms } from "./spokenOutcomes";

/**
 * What a clause must come to for a finding to be read from its words alone: how much likelier they are under the outcome
 * than in general (natural logarithm), the outcome's share among all, known words. Chosen: see tests/reference/phrases.
 */
const least = { logLikelihood: 8, share: 0.5, words: 2 };
/** No more of the words than this may be strange, as a share. Chosen likewise. */
const mostStrange = 0.5;

/**
 * Reads what no phrase took up: a clause that is told much as one outcome is told, in other words. Nobody can be sure of
 * it, so it counts as said with doubt.
 *
 * @param used tokens that a finding took
 * @param isOpen says which outcomes of the reader's `spoken` make sense here, by their names
 * @param carried the part that was spoken of last
 */
export function readByWords(
  sentence: readonly Token[],
  mentions: readonly Mention[],
  scopes: Scopes,
  used: ReadonlySet<number>,
  { vocabulary, spoken, words }: Reader,
  isOpen: (outcome: string) => boolean,
  carried: PartRef | undefined,
  text: string,
): Readonly<{ finding: FindingRead; tokens: readonly number[] }>[] {
  const { model, meanings } = spoken;
  const isMentioned = (at: number) => mentions.some(({ first, last }) => at >= first && at <= last);
  return clausesOf(sentence, scopes).flatMap((clause) => {
    const free = clause.filter((at) => !used.has(at) && !scopes.isBelieved(at));
    const telling = free.filter((at) => !isMentioned(at) && !sentence[at]?.filler && !scopes.isSmallWord(at));
    const terms = tellingTerms(
      clause.flatMap((at) => (scopes.isBelieved(at) ? [] : (sentence[at] ?? []))),
      words,
    );
    if (telling.length === 0 || terms.size < least.words) return [];
    const { logs, strange } = model.weigh(terms, isOpen);
    const best = likeliest(logs);
    const meaning = meanings[best.row];
    if (!meaning || best.log < least.logLikelihood || best.share < least.share || strange > mostStrange)
      return [];
    const { check, outcome } = meaning;
    const mention = mentions.find(
      ({ first, ref }) => clause.includes(first) && checkBearsOn(vocabulary, check, ref.part),
    );
    const part = mention?.ref ?? carried;
    const span = [sentence[free[0] ?? 0]?.start ?? 0, sentence[free.at(-1) ?? 0]?.end ?? 0] as const;
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
    return [{ finding, tokens: free }];
  });
}

/** The places of every clause's tokens, in order. */
function clausesOf(sentence: readonly Token[], { clauseOf }: Scopes): number[][] {
  const clauses: number[][] = [];
  for (const at of sentence.keys()) {
    const open = clauses.at(-1);
    if (open && clauseOf(open[0] ?? 0) === clauseOf(at)) open.push(at);
    else clauses.push([at]);
  }
  return clauses;
}

/** The row with the highest logarithm, and its share among all that are possible; an impossible one has 0. */
function likeliest(logs: Float64Array): Readonly<{ row: number; log: number; share: number }> {
  let row = -1;
  for (const [at, log] of logs.entries()) if (log !== 0 && (row < 0 || log > (logs[row] ?? 0))) row = at;
  const top = logs[row] ?? 0;
  const total = logs.reduce((sum, log) => sum + (log === 0 ? 0 : Math.exp(log - top)), 0);
  return { row, log: top, share: total > 0 ? 1 / total : 0 };
}
