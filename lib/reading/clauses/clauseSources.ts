import { readDenial } from "../readDenial";
import type { Reader } from "../reader";
import { clausesOf, type Sentence } from "../sentence";
import { type SpokenOutcomes, tellingTerms } from "./spokenOutcomes";

/** What may speak for an outcome. */
export const clauseSourceNames = ["words", "near", "wordsAround", "phrase", "part", "partBefore"] as const;
export type ClauseSourceName = (typeof clauseSourceNames)[number];

/**
 * What every source says of a clause: for each outcome, by the order of the reader's `spoken`, how much it speaks for it
 * (logarithms, or -1 to 1; only those of open outcomes mean anything), and which share of its terms nothing was ever told with.
 */
export type ClauseSources = Readonly<{
  /** Places of the clause's tokens in the sentence. */
  tokens: readonly number[];
  says: Readonly<Record<ClauseSourceName, Float64Array>>;
  strange: number;
}>;

/**
 * Asks every source about each clause of a sentence; a clause without a phrase or a term that anything was ever told with is left out.
 *
 * @param isOpen says which outcomes make sense here, by their names
 * @param partBefore the part that was spoken of last before the sentence
 */
export function clauseSources(
  sentence: Sentence,
  reader: Reader,
  isOpen: (outcome: string) => boolean,
  partBefore: string | undefined,
): ClauseSources[] {
  const { model, near } = reader.spoken;
  const around = tellingTerms(sentence.tokens, reader.words);
  const wordsAround = model.weigh(around, isOpen).logs;
  let before = partBefore;
  return clausesOf(sentence).flatMap((tokens) => {
    const terms = tellingTerms(
      tokens.flatMap((at) => sentence.tokens[at] ?? []),
      reader.words,
    );
    const { logs, strange } = model.weigh(terms, isOpen);
    const here = sentence.mentions.filter(({ first }) => tokens.includes(first)).map(({ ref }) => ref.part);
    const earlier = here.length === 0 && before !== undefined ? [before] : [];
    before = here.at(-1) ?? before;
    const phrase = saidInPhrases(sentence, tokens, reader);
    if (strange === 1 && !phrase.includes(1)) return [];
    const says = {
      words: logs,
      near: near.weigh(terms, isOpen),
      wordsAround,
      phrase,
      part: partsFit(reader.spoken, here),
      partBefore: partsFit(reader.spoken, earlier),
    };
    return [{ tokens, says, strange }];
  });
}

/** 1 for the outcomes that a phrase within some tokens says, or one that denies another so that they are meant; 0 for all others. */
function saidInPhrases({ matches, scopes }: Sentence, tokens: readonly number[], { spoken }: Reader) {
  const said = new Float64Array(spoken.meanings.length);
  for (const { phrase, tokens: taken } of matches) {
    if (!taken.every((at) => tokens.includes(at))) continue;
    const { check, outcome } = phrase.meaning;
    const [first = 0, last = first] = [taken[0], taken.at(-1)];
    const meant = scopes.deniedBy(first, last, new Set(taken)) ? readDenial(check, outcome) : outcome.id;
    const row = meant === undefined ? undefined : spoken.rowOf.get(`${check.id} ${meant}`);
    if (row !== undefined) said[row] = 1;
  }
  return said;
}

/** 1 for the outcomes of checks that bear on one of the parts, -1 for those of others; 0 where no part is named. */
function partsFit({ meanings, bearOn }: SpokenOutcomes, parts: readonly string[]): Float64Array {
  const fits = new Float64Array(meanings.length).fill(parts.length === 0 ? 0 : -1);
  for (const part of parts) for (const row of bearOn(part)) fits[row] = 1;
  return fits;
}
