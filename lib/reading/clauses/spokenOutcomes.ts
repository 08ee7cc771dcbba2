import { NearTexts, type ToldText } from "../../diagnosis/nearTexts";
import { WordModel } from "../../diagnosis/wordModel";
import { rememberWords } from "../../text/rememberWords";
import type { Saying } from "../../vocabulary/saying";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { checkBearsOn } from "../parts/partFit";
import { type PreparedWords, splitTokens, type Token } from "../words/token";
import { type OutcomeMeaning, outcomeName } from "./outcomeMeaning";

/** How each outcome of the checks is told. */
export type SpokenOutcomes = Readonly<{
  /** The words by which it is told. */
  model: WordModel;
  /** All that was ever told of it, by closeness. */
  near: NearTexts;
  /** By the order of the model. */
  meanings: readonly OutcomeMeaning[];
  rowOf: ReadonlyMap<string, number>;
  /** The rows of the outcomes whose checks bear on a part. */
  bearOn: (part: string) => readonly number[];
}>;

/** What a word counts by where it stands. Chosen: see tests/reference/phrases. */
const weightOf = { name: 1, toldAs: 2 } as const;

/** Learns how every outcome is told: from its label, its synonyms, the notes from which it would be read, and the sayings. */
export function learnSpokenOutcomes(vocabulary: Vocabulary, words: PreparedWords): SpokenOutcomes {
  const { checks, sayings } = vocabulary;
  const meanings = [...checks.values()].flatMap((check) =>
    check.outcomes.map((outcome) => ({ check, outcome })),
  );
  const model = new WordModel(meanings.map(outcomeName));
  const told: ToldText[] = [];
  const learn = (topic: string, text: string, weight: number) => {
    const terms = tellingTerms(splitTokens(text, words), words);
    model.learn(topic, weighed(terms, weight));
    told.push({ topic, terms });
  };
  for (const meaning of meanings) {
    const { label, synonyms, toldAs } = meaning.outcome;
    const topic = outcomeName(meaning);
    for (const name of [label, ...synonyms]) learn(topic, name, weightOf.name);
    for (const note of toldAs) learn(topic, note, weightOf.toldAs);
  }
  const rowOf = new Map(model.topics.map((topic, row) => [topic, row]));
  for (const { topic, text } of sayings.flatMap(toldIn)) learn(topic, text, weightOf.toldAs);
  const bearOn = rememberWords((part) =>
    meanings.flatMap(({ check }, row) => (checkBearsOn(vocabulary, check, part) ? [row] : [])),
  );
  return { model, near: new NearTexts(model.topics, told), meanings, rowOf, bearOn };
}

type Spoken = Readonly<{ spoken: SpokenOutcomes; words: PreparedWords }>;

/** Takes a note that tells of an outcome back, so that it can be read as if nobody had written it, or with `isBack` brings it back. */
export function forgetNote(reader: Spoken, meaning: OutcomeMeaning, note: string, isBack = false): void {
  forget(reader, outcomeName(meaning), note, isBack);
}

/** The same for all that a saying tells. */
export function forgetSaying(reader: Spoken, saying: Saying, isBack = false): void {
  for (const { topic, text } of toldIn(saying)) forget(reader, topic, text, isBack);
}

function forget({ spoken, words }: Spoken, topic: string, text: string, isBack: boolean): void {
  const terms = tellingTerms(splitTokens(text, words), words);
  spoken.model.learn(topic, weighed(terms, weightOf.toldAs), isBack ? 1 : -1);
  spoken.near.leaveOut({ topic, terms }, !isBack);
}

const toldIn = ({ means }: Saying) =>
  means.map(({ check, outcome, words }) => ({ topic: `${check} ${outcome}`, text: words }));

const weighed = (terms: Iterable<string>, weight: number) =>
  new Map([...terms].map((term) => [term, weight]));

/** The telling terms of a text, each with the same weight. */
export const termsOf = (text: string, weight: number, words: PreparedWords) =>
  weighed(tellingTerms(splitTokens(text, words), words), weight);

/** The names in the model of the outcomes that make sense, as `admits` says. */
export function openOutcomes(
  { model, meanings }: SpokenOutcomes,
  admits: (meaning: OutcomeMeaning) => boolean,
): ReadonlySet<string> {
  return new Set(model.topics.filter((_, row) => meanings[row] !== undefined && admits(meanings[row])));
}

/** What the two ways of telling outcomes apart by their words count where they are taken together. Chosen: see `evaluate --evidence`. */
const say = { words: 0.5, near: 1 } as const;

/** How likely a text is with each outcome against texts in general, by its words and by what is close to it; natural logarithm, by the order of the model. */
export function weighTold(
  { model, near }: SpokenOutcomes,
  terms: ReadonlySet<string>,
  isOpen: (outcome: string) => boolean,
): Float64Array {
  const close = near.weigh(terms, isOpen);
  return model.weigh(terms, isOpen).logs.map((log, row) => say.words * log + say.near * (close[row] ?? 0));
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
