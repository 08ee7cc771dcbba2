import type { FindingRead } from "../findingRead";
import type { PhraseMatch } from "../phrases/matchPhrases";
import type { OutcomeMeaning } from "./outcomeMeaning";
import type { ToldClause } from "./tellClauses";

/** What a phrase says stands where it is at least so probable as a share of anything else. Chosen: see tests/reference/phrases. */
const leastOfOther = 0.25;

/**
 * Whether what was read from a phrase may stand: not where the clauses it stands in far more probably tell of something else, for
 * a word has many meanings. What other phrases read there does not count against it, since a clause may tell of several things; nor
 * is what was denied outright doubted.
 *
 * @param said what all phrases of the sentence were read as
 */
export function isProbable(
  finding: FindingRead,
  { tokens }: PhraseMatch<OutcomeMeaning>,
  said: readonly FindingRead[],
  clauses: readonly ToldClause[],
): boolean {
  if (finding.absent) return true;
  return standsIn(tokens, clauses).some(({ outcomes }) => {
    const share = outcomes.find(({ meaning }) => isOf(meaning, finding))?.share ?? 0;
    const other = outcomes.find(({ meaning }) => !said.some((one) => isOf(meaning, one)));
    return share > 0 && share >= leastOfOther * (other?.share ?? 0);
  });
}

/** Whether nothing else was read from the clauses that a phrase stands in. */
export const readsAlone = (
  { tokens }: PhraseMatch<OutcomeMeaning>,
  used: ReadonlySet<number>,
  clauses: readonly ToldClause[],
) =>
  standsIn(tokens, clauses).every((clause) =>
    clause.tokens.every((at) => !used.has(at) || tokens.includes(at)),
  );

const standsIn = (tokens: readonly number[], clauses: readonly ToldClause[]) =>
  clauses.filter((clause) => tokens.some((at) => clause.tokens.includes(at)));

const isOf = ({ check, outcome }: OutcomeMeaning, finding: FindingRead) =>
  check.id === finding.check && outcome.id === finding.outcome;
