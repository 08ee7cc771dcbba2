import { WordModel } from "../../diagnosis/wordModel";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { PreparedWords } from "../words/token";
import { termsOf } from "./spokenOutcomes";

/** What a word counts by where it stands. Chosen. */
const weightOf = { name: 3, question: 1.5, how: 1, note: 0.5 } as const;

/** Learns the words by which each check is called: its names, what it asks and how it is done, and the notes that tell of its outcomes. */
export function learnSpokenChecks({ checks }: Vocabulary, words: PreparedWords): WordModel {
  const model = new WordModel([...checks.keys()]);
  for (const { id, label, synonyms, question, how, outcomes } of checks.values()) {
    const learn = (text: string, weight: number) => model.learn(id, termsOf(text, weight, words));
    for (const name of [label, ...synonyms]) learn(name, weightOf.name);
    learn(question, weightOf.question);
    learn(how, weightOf.how);
    for (const { toldAs } of outcomes) for (const note of toldAs) learn(note, weightOf.note);
  }
  return model;
}
