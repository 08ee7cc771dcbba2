import type { FindingRead } from "../findingRead";
import type { PhraseMatch } from "../phrases/matchPhrases";
import type { OutcomeMeaning } from "./outcomeMeaning";
import type { ToldClause } from "./tellClauses";

/** What is less probable than this speaks against no phrase. Chosen: see tests/reference/phrases. */
const leastAgainst = 0.2;

/**
 * Whether what was read from a phrase may stand: not where the clauses it stands in more probably tell of something else, for a
 * word has many meanings. What answers a check that a phrase answers there does not count against it, since a clause may tell of
 * several things; nor is what was denied outright doubted.
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
  const answered = new Set(said.map(({ check }) => check));
  return standsIn(tokens, clauses).some(({ outcomes }) => {
    const share = outcomes.find(({ meaning }) => isOf(meaning, finding))?.share ?? 0;
    const other = outcomes.find(({ meaning }) => !answered.has(meaning.check.id))?.share ?? 0;
    return share > 0 && (share >= other || other < leastAgainst);
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
