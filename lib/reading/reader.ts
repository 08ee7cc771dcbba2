import type { WordModel } from "../diagnosis/wordModel";
import type { Vocabulary } from "../vocabulary/vocabulary";
import type { OutcomeMeaning } from "./clauses/outcomeMeaning";
import { learnSpokenChecks } from "./clauses/spokenChecks";
import { learnSpokenOutcomes, type SpokenOutcomes } from "./clauses/spokenOutcomes";
import { buildPhraseIndex, type PhraseIndex } from "./phrases/phraseIndex";
import { buildSequences, type Sequences } from "./words/sequences";
import { type PreparedWords, prepareWords, splitTokens, tellingTerms } from "./words/token";
import { buildTurns, type Turns } from "./words/turns";

/** Everything that reading shop language needs, built once from the vocabulary. */
export type Reader = Readonly<{
  vocabulary: Vocabulary;
  words: PreparedWords;
  outcomes: PhraseIndex<OutcomeMeaning>;
  checks: PhraseIndex<string>;
  parts: PhraseIndex<string>;
  instruments: PhraseIndex<string>;
  sequences: Sequences;
  spoken: SpokenOutcomes;
  /** The words by which each check is called. */
  spokenChecks: WordModel;
  turns: Turns;
  /** The telling terms of each note on a cause, by the cause's id. */
  causeNotes: CauseNoteTerms;
}>;

type CauseNoteTerms = ReadonlyMap<string, readonly (readonly string[])[]>;

/** Builds the reader: phrase indexes over the vocabulary's labels and synonyms, and the small words. */
export function buildReader(vocabulary: Vocabulary): Reader {
  const words = prepareWords(vocabulary.words);
  const causeNotes = new Map(
    [...vocabulary.causeNotes].map(([cause, notes]) => [
      cause,
      notes.map((note) => tellingTerms(note, words)),
    ]),
  );
  const lexicon = lexiconOf(vocabulary, causeNotes, words);
  const named = (entries: Iterable<Readonly<{ id: string; label: string; synonyms: readonly string[] }>>) =>
    buildPhraseIndex(
      [...entries].flatMap(({ id, label, synonyms }) =>
        [label, ...synonyms].map((text) => ({ text, meaning: id, key: id })),
      ),
      words,
      lexicon,
    );
  return {
    vocabulary,
    words,
    outcomes: buildPhraseIndex(outcomePhrases(vocabulary, words), words, lexicon),
    checks: named(vocabulary.checks.values()),
    parts: named(vocabulary.parts.values()),
    instruments: named(vocabulary.instruments.values()),
    sequences: buildSequences(vocabulary.words, words),
    spoken: learnSpokenOutcomes(vocabulary, words),
    spokenChecks: learnSpokenChecks(vocabulary, words),
    turns: buildTurns(vocabulary.words, words),
    causeNotes,
  };
}

/**
 * Every way of saying an outcome: its synonyms; its label where that says enough by itself (two telling words or more);
 * its label together with the name of its check.
 */
function* outcomePhrases(vocabulary: Vocabulary, words: PreparedWords) {
  for (const check of vocabulary.checks.values()) {
    for (const outcome of check.outcomes) {
      const meaning = { check, outcome };
      const key = `${check.id} ${outcome.id}`;
      const telling = splitTokens(outcome.label, words).filter((token) => !token.filler).length;
      const texts = [...outcome.synonyms, `${check.label} ${outcome.label}`];
      if (telling >= 2) texts.push(outcome.label);
      for (const text of texts) yield { text, meaning, key };
    }
  }
}

/** A word that so many notes have is no slip in one of them. */
const notesOfWord = 2;

/** The words that are right as they stand: those of the handbook's prose, of its names, and those that several notes have. */
function lexiconOf(
  { checks, causes, repairs, parts, instruments }: Vocabulary,
  causeNotes: CauseNoteTerms,
  words: PreparedWords,
): Set<string> {
  const termsOf = (text: string) => splitTokens(text, words).map(({ term }) => term);
  const prose = [
    ...[...checks.values()].flatMap(({ question, how }) => [question, how]),
    ...[...causes.values()].flatMap(({ label, comesAbout, prove }) => [label, comesAbout, prove]),
    ...[...repairs.values()].flatMap(({ label, how, goesWrong }) => [label, how, ...goesWrong]),
    ...[...parts.values(), ...instruments.values()].flatMap(({ label, synonyms }) => [label, ...synonyms]),
  ];
  const ofChecks = [...checks.values()].flatMap(({ outcomes }) => outcomes.flatMap(({ toldAs }) => toldAs));
  const counts = new Map<string, number>();
  for (const note of [...ofChecks.map(termsOf), ...[...causeNotes.values()].flat()])
    for (const term of new Set(note)) counts.set(term, (counts.get(term) ?? 0) + 1);
  const common = [...counts].filter(([, count]) => count >= notesOfWord).map(([term]) => term);
  return new Set([...prose.flatMap(termsOf), ...common]);
}
