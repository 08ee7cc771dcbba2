import type { Reader } from "../reader";
import type { Sentence } from "../sentence";
import { clauseSources } from "./clauseSources";
import type { OutcomeMeaning } from "./outcomeMeaning";
import { weighClause } from "./weighClause";

/** An outcome that a clause may tell of, with the probability that it does; what is missing to 1 tells of nothing known. */
export type ToldOutcome = Readonly<{ meaning: OutcomeMeaning; share: number }>;

/** What a clause may tell of, the likeliest first, and whether it speaks of the siblings ("the other two"), or of what somebody believes. */
export type ToldClause = Readonly<{
  /** Places of its tokens in the sentence. */
  tokens: readonly number[];
  others: boolean;
  believed: boolean;
  outcomes: readonly ToldOutcome[];
}>;

/** Outcomes less probable than this are left out. */
const leastShare = 0.002;

/**
 * Tells of every clause of a sentence what it may say, and how probably: P(outcome | clause) over all outcomes that make sense
 * here. So words count that are no phrase of the handbook, each for as much as can be made of it.
 *
 * @param open the names of the outcomes that make sense here
 * @param partBefore the part that was spoken of last before the sentence
 */
export function tellClauses(
  sentence: Sentence,
  reader: Reader,
  open: ReadonlySet<string>,
  partBefore: string | undefined,
): ToldClause[] {
  const { meanings, model } = reader.spoken;
  const rows = model.topics.map((name) => open.has(name));
  const { scopes } = sentence;
  const ofOthers = new Set(scopes.others.map(({ first }) => first));
  return clauseSources(sentence, reader, (name) => open.has(name), partBefore).map((sources) => {
    const shares = weighClause(sources, reader.vocabulary.readingWeights, rows).outcomes;
    const outcomes: ToldOutcome[] = [];
    for (const [row, meaning] of meanings.entries()) {
      const share = shares[row] ?? 0;
      if (share >= leastShare) outcomes.push({ meaning, share });
    }
    return {
      tokens: sources.tokens,
      others: sources.tokens.some((at) => ofOthers.has(at)),
      believed: sources.tokens.some((at) => scopes.isBelieved(at)),
      outcomes: outcomes.sort((a, b) => b.share - a.share),
    };
  });
}
