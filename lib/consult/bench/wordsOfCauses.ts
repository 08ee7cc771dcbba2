import type { Case } from "../../casebook/caseFile";
import { isRepairStep } from "../../casebook/step";
import type { CauseModel } from "../../diagnosis/causeModel";
import { frequencyOf } from "../../diagnosis/frequencyWords";
import { WordModel } from "../../diagnosis/wordModel";
import type { Reader } from "../../reading/reader";
import { type PreparedWords, tellingTerms } from "../../reading/words/token";
import type { Cause } from "../../vocabulary/cause";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { causeShares } from "../causes/causeShares";
import { countTerms } from "./countTerms";
import { pairsOf } from "./pairsOf";

/** What a word counts by where it stands, beside one of the prose that tells how a cause comes about. Chosen: see `evaluate --casebook`. */
const weightOf = {
  label: 3,
  synonym: 1.5,
  handbookNote: 2,
  comesAbout: 1,
  prove: 1.5,
  tellTale: 2,
  pair: 2,
  said: 1,
  note: 0.7,
  story: 0.4,
} as const;
/** An outcome is told of as a cause's own when the cause shows it at least so often, and so much more than others do. Chosen. */
const telling = { often: 0.4, logOdds: 0.5 } as const;

/** What the words of the handbook are learned from: its texts cut into terms. */
type Reading = Pick<Reader, "words" | "causeNotes">;

/**
 * Builds the model of the words by which each cause is told, from the handbook alone: its names, its prose, the notes on it,
 * and the ways of saying the findings that tell for it.
 *
 * @param model the handbook's model, before any case
 */
export function wordModelOf(
  vocabulary: Vocabulary,
  model: CauseModel,
  { words, causeNotes }: Reading,
): WordModel {
  const spoken = new WordModel(model.causes);
  for (const [row, id] of model.causes.entries()) {
    const cause = vocabulary.causes.get(id);
    if (!cause) continue;
    const { label, synonyms, comesAbout, prove } = cause;
    const entry = [
      [label, weightOf.label] as const,
      ...synonyms.map((synonym) => [synonym, weightOf.synonym] as const),
      [comesAbout, weightOf.comesAbout] as const,
      [prove, weightOf.prove] as const,
      ...tellTalePhrases(cause, row, vocabulary, model),
    ];
    spoken.learn(id, countTerms(entry, words));
    for (const terms of causeNotes.get(id) ?? []) spoken.learn(id, weighed(terms, weightOf.handbookNote));
  }
  return spoken;
}

/** Only pairs that so many texts have are kept: two thirds have been told once, and tell nothing that their words do not. Chosen: see `evaluate --notes`. */
const textsOfPair = 2;

/**
 * Builds the model of the pairs of words by which each cause is told, from the handbook's short texts alone: a casebook's
 * pairs would be too many to keep.
 *
 * @param causes ids, in the order that the model is to have
 */
export function pairModelOf(
  { causes: entries }: Vocabulary,
  causes: readonly string[],
  { words, causeNotes }: Reading,
): WordModel {
  const texts = [...entries.values()].flatMap(({ id, label, synonyms, comesAbout, prove }) => {
    const names = [label, ...synonyms, comesAbout, prove].map((text) => tellingTerms(text, words));
    return [...names, ...(causeNotes.get(id) ?? [])].map((terms) => ({ id, pairs: [...pairsOf(terms)] }));
  });
  const textsWith = weighed(
    texts.flatMap(({ pairs }) => pairs),
    1,
  );
  const told = new WordModel(causes);
  for (const { id, pairs } of texts) {
    const kept = pairs.filter((pair) => (textsWith.get(pair) ?? 0) >= textsOfPair);
    told.learn(id, weighed(kept, weightOf.pair));
  }
  return told;
}

/**
 * Teaches one of the handbook's notes on a cause, or with `sign` -1 takes it back, so that it can be asked about as if nobody
 * had written it.
 */
export function learnNote(
  { spoken, pairs, reader }: Readonly<{ spoken: WordModel; pairs: WordModel; reader: Pick<Reader, "words"> }>,
  cause: string,
  note: string,
  sign: 1 | -1,
): void {
  const terms = tellingTerms(note, reader.words);
  spoken.learn(cause, weighed(terms, weightOf.handbookNote), sign);
  const kept = [...pairsOf(terms)].filter((pair) => pairs.has(pair));
  pairs.learn(cause, weighed(kept, weightOf.pair), sign);
}

/** How much each term counts by how often it is there. */
function weighed(terms: Iterable<string>, weight: number): Map<string, number> {
  const counts = new Map<string, number>();
  for (const term of terms) counts.set(term, (counts.get(term) ?? 0) + weight);
  return counts;
}

/** The ways of saying each telling finding, the more telling the more; many synonyms share what one would count. */
function tellTalePhrases(
  { findings }: Cause,
  row: number,
  { checks }: Vocabulary,
  model: CauseModel,
): (readonly [string, number])[] {
  return Object.entries(findings).flatMap(([id, words]) => {
    const check = checks.get(id);
    return (check?.outcomes ?? []).flatMap(({ id: outcome, label, synonyms }) => {
      const word = words[outcome];
      if (word === undefined || outcome === check?.normal || frequencyOf[word] < telling.often) return [];
      const likelihoods = model.likelihoods(id, outcome);
      if (!likelihoods) return [];
      const mean = likelihoods.reduce((sum, one) => sum + one, 0) / likelihoods.length;
      const logOdds = Math.log((likelihoods[row] ?? mean) / mean);
      if (logOdds < telling.logOdds) return [];
      const weight = (weightOf.tellTale * logOdds) / (2 + synonyms.length);
      return [label, ...synonyms].map((phrase) => [phrase, weight] as const);
    });
  });
}

/** Teaches the model the words of a finished case, or with `sign` -1 takes them back. */
export function learnWords(spoken: WordModel, kase: Case, words: PreparedWords, sign: 1 | -1 = 1): void {
  const { title, complaint, story, path, lessons, causes } = kase;
  const notes = path.flatMap((step) => (isRepairStep(step) || step.note === undefined ? [] : [step.note]));
  const terms = countTerms(
    [
      [title, weightOf.said],
      [complaint, weightOf.said],
      [story, weightOf.story],
      ...[...notes, ...lessons].map((text) => [text, weightOf.note] as const),
    ],
    words,
  );
  for (const { id, share } of causeShares(causes)) spoken.learn(id, terms, sign * share);
}
