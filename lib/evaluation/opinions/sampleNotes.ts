import type { Bench } from "../../consult/bench/bench";
import { learnNote } from "../../consult/bench/wordsOfCauses";
import { type OpinionSample, sampleOpinions } from "./opinionSample";

/** Of so many notes of a cause is asked; more would only take longer. Chosen. */
const notesOfCause = 8;

/**
 * Asks about some of the handbook's notes on every cause, each as if nobody had written it: problems in the bench's own words.
 *
 * Source: leave-one-out cross-validation, Stone 1974.
 */
export function sampleNotes(bench: Bench): OpinionSample[] {
  const { causes, causeNotes } = bench.vocabulary;
  return [...causes.values()].flatMap(({ id, families }) => {
    const notes = causeNotes.get(id) ?? [];
    const stride = Math.ceil(notes.length / notesOfCause);
    return notes
      .filter((_, at) => at % stride === 0)
      .map((note) => {
        learnNote(bench, id, note, -1);
        try {
          return sampleOpinions(bench, { instrument: families[0] ?? "", says: note }, id);
        } finally {
          learnNote(bench, id, note, 1);
        }
      });
  });
}
