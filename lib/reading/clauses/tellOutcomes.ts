import type { Reader } from "../reader";
import { findScopes } from "../words/scopes";
import { splitTokens, type Token } from "../words/token";
import type { OutcomeMeaning } from "./outcomeMeaning";
import { openOutcomes, tellingTerms } from "./spokenOutcomes";

/** An outcome that a clause may tell of, with the probability that it does; what is missing to 1 tells of nothing known. */
export type ToldOutcome = Readonly<{ meaning: OutcomeMeaning; share: number }>;

/** What a clause may tell of, and whether it speaks of the siblings ("the other two"). */
export type ToldClause = Readonly<{ others: boolean; outcomes: readonly ToldOutcome[] }>;

/** Words that go together are counted as if they did not: their logarithms count this much. Chosen: see `evaluate --opinions`. */
const tempering = 0.5;
/** Log-likelihood, against words in general, at which an outcome is as probable as that nothing known is told. Chosen likewise. */
const logOfNothing = 5;
/** Outcomes less probable than this are left out. */
const leastShare = 0.002;

/**
 * Tells of every clause of a text what it may say, by its words alone: P(outcome | words) over all outcomes that make sense
 * here. So words count that are no phrase of the handbook, each for as much as can be made of it.
 *
 * @param admits says which meanings make sense here
 * @returns one list a clause, those without any left out
 */
export function tellOutcomes(
  text: string,
  reader: Reader,
  admits: (meaning: OutcomeMeaning) => boolean,
): ToldClause[] {
  const { model, meanings } = reader.spoken;
  const tokens = splitTokens(text, reader.words);
  const open = openOutcomes(reader.spoken, admits);
  return clausesOf(tokens, reader).flatMap(({ others, clause }) => {
    const { logs } = model.weigh(tellingTerms(clause, reader.words), (name) => open.has(name));
    const odds = logs.map((log) => (log > 0 ? Math.exp(tempering * log) : 0));
    const total = odds.reduce((sum, one) => sum + one, Math.exp(tempering * logOfNothing));
    const outcomes = meanings.flatMap((meaning, row) => {
      const share = (odds[row] ?? 0) / total;
      return share < leastShare ? [] : [{ meaning, share }];
    });
    return outcomes.length > 0 ? [{ others, outcomes }] : [];
  });
}

function clausesOf(tokens: readonly Token[], { sequences }: Reader) {
  const scopes = findScopes(tokens, sequences);
  const clauses: Token[][] = [];
  for (const [at, token] of tokens.entries()) {
    const open = clauses.at(-1);
    const goesOn =
      at > 0 && token.breakBefore !== "sentence" && scopes.clauseOf(at) === scopes.clauseOf(at - 1);
    if (open && goesOn) open.push(token);
    else clauses.push([token]);
  }
  const ofOthers = new Set(scopes.others.map(({ first }) => tokens[first]));
  return clauses.map((clause) => ({ clause, others: clause.some((token) => ofOthers.has(token)) }));
}
