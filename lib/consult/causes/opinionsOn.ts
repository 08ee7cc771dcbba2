import { type FindingEvidence, findingEvidence } from "../../diagnosis/findingEvidence";
import { weighCauses } from "../../diagnosis/posterior";
import { voteOfCases } from "../../diagnosis/voteOfCases";
import { tellingTerms } from "../../reading/words/token";
import { appliesTo } from "../../vocabulary/appliesTo";
import type { Bench } from "../bench/bench";
import { pairsOf } from "../bench/pairsOf";
import type { Finding } from "../finding";
import type { Problem } from "../problem";
import type { RetrievedLike } from "../similarCases";
import type { SourcedFinding, Understanding } from "../understand/understandProblem";
import { causeShares } from "./causeShares";
import { clauseEvidence } from "./clauseEvidence";
import { guessedEvidence } from "./guessedEvidence";

/** A finding as it is weighed, with where it came from. */
export type KeyedFinding = Finding & Partial<Pick<SourcedFinding, "shown" | "how">>;

/**
 * What every source says of the causes by the model's order, not yet weighed against one another: logarithms, or what is proportional to
 * one once it is weighed.
 */
export type Opinions = Readonly<{
  /** Which causes can be at work at all; none for an instrument outside the handbook. */
  possible: (cause: string) => boolean;
  prior: Float64Array;
  setDown: FindingEvidence;
  readFromEvidence: Float64Array;
  readFromText: FindingEvidence;
  likeCases: Float64Array;
  /** How much of the whole problem's words each cause has: `WordModel.affinity`, 0 or more. */
  words: Float64Array;
  /** The same of the pairs of words. */
  pairs: Float64Array;
  /** The more was set down as evidence, the less the free text counts: then it tells the complaint rather than what was found. */
  clauses: Float64Array;
  /** Share of the problem's words that no cause was ever told with, 0..1. */
  strange: number;
}>;

/** So that a cause which no like case had is not impossible. */
const leastVote = 1e-6;

/** Asks every source for what it says of the causes. */
export function opinionsOn(
  bench: Bench,
  problem: Problem,
  { instrument, guessed, observed, told: clauses }: Understanding,
  keyed: ReadonlyMap<string, KeyedFinding>,
  retrieved: readonly RetrievedLike[],
): Opinions {
  const { vocabulary, model, spoken, pairs, reader } = bench;
  const outside = instrument !== undefined && vocabulary.instruments.get(instrument)?.outside === true;
  const possible = (id: string) =>
    !outside && appliesTo(vocabulary, vocabulary.causes.get(id)?.families ?? [], instrument);
  const prior = weighCauses(model, new Map(), { possible }).causes;
  const whole = [observed, ...problem.evidence.map(({ check, found }) => `${check}: ${found}`)].join(". ");
  const words = tellingTerms(whole, reader.words).map((term) => spoken.mend(term));
  const votes = retrieved.map(({ case: { causes }, similarity }) => ({
    similarity,
    causes: causeShares(causes),
  }));
  const doubtful = new Set([...keyed].filter(([, { shown }]) => shown?.doubtful).map(([key]) => key));
  const evidenceOf = (isOwn: (finding: KeyedFinding) => boolean) => {
    const own = [...keyed].filter(([, finding]) => isOwn(finding));
    return findingEvidence(model, new Map(own.map(([key, { outcome }]) => [key, outcome])), doubtful);
  };
  return {
    possible,
    prior: prior.map(Math.log),
    setDown: evidenceOf(({ how = "outright" }) => how === "outright"),
    readFromEvidence: guessedEvidence(bench, guessed, keyed),
    readFromText: evidenceOf(({ how, shown }) => how === "phrase" && shown?.source === "says"),
    likeCases: voteOfCases(model.causes, prior, votes).map((vote) => Math.log(Math.max(vote, leastVote))),
    words: spoken.affinity(words),
    clauses: clauseEvidence(bench, clauses).map((log) => log / (1 + problem.evidence.length)),
    pairs: pairs.affinity(pairsOf(words)),
    strange: spoken.strangeShare(words, possible),
  };
}
