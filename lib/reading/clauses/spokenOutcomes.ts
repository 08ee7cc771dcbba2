import { WordModel } from "../../diagnosis/wordModel";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { type PreparedWords, splitTokens, type Token } from "../words/token";
import { type OutcomeMeaning, outcomeName } from "./outcomeMeaning";

/** The words by which each outcome of the checks is told. */
export type SpokenOutcomes = Readonly<{
  model: WordModel;
  /** By the order of the model. */
  meanings: readonly OutcomeMeaning[];
}>;

/** What a word counts by where it stands. Chosen: see tests/reference/phrases. */
const weightOf = { name: 1, toldAs: 2 } as const;

/** Learns the words of every outcome: of its label, its synonyms, and the notes from which it would be read. */
export function learnSpokenOutcomes({ checks }: Vocabulary, words: PreparedWords): SpokenOutcomes {
  const meanings = [...checks.values()].flatMap((check) =>
    check.outcomes.map((outcome) => ({ check, outcome })),
  );
  const model = new WordModel(meanings.map(outcomeName));
  for (const meaning of meanings) {
    const { label, synonyms, toldAs } = meaning.outcome;
    const learn = (text: string, weight: number) =>
      model.learn(outcomeName(meaning), termsOf(text, weight, words));
    for (const name of [label, ...synonyms]) learn(name, weightOf.name);
    for (const note of toldAs) learn(note, weightOf.toldAs);
  }
  return { model, meanings };
}

/** Teaches a note that tells of an outcome, or with `sign` -1 takes it back, so that it can be read as if nobody had written it. */
export function learnOutcomeNote(
  { spoken, words }: Readonly<{ spoken: SpokenOutcomes; words: PreparedWords }>,
  meaning: OutcomeMeaning,
  note: string,
  sign: 1 | -1,
): void {
  spoken.model.learn(outcomeName(meaning), termsOf(note, weightOf.toldAs, words), sign);
}

/** The telling terms of a text, each with the same weight. */
export const termsOf = (text: string, weight: number, words: PreparedWords) =>
  new Map([...tellingTerms(splitTokens(text, words), words)].map((term) => [term, weight]));

/** The names in the model of the outcomes that make sense, as `admits` says. */
export function openOutcomes(
  { model, meanings }: SpokenOutcomes,
  admits: (meaning: OutcomeMeaning) => boolean,
): ReadonlySet<string> {
  return new Set(model.topics.filter((_, row) => meanings[row] !== undefined && admits(meanings[row])));
}

/** How many words after one that denies are told as denied, too. Chosen: see `evaluate --opinions`. */
const denialReach = 3;

/**
 * The terms of some tokens once each, without fillers and without the numbers that count parts. What stands just after a word
 * that denies is told a second time as denied ("no dent").
 *
 * Source: marking of negated words, Das & Chen 2001; Pang, Lee & Vaithyanathan 2002.
 */
export function tellingTerms(tokens: readonly Token[], { denials }: PreparedWords): Set<string> {
  const terms = new Set<string>();
  let denied = 0;
  for (const { filler, place, text, term } of tokens) {
    if (filler || (place !== undefined && /^\d/.test(text))) continue;
    terms.add(term);
    if (denials.has(term)) denied = denialReach;
    else if (denied > 0) {
      terms.add(`no ${term}`);
      denied -= 1;
    }
  }
  return terms;
}
