import type { Bench } from "../../consult/bench/bench";
import { learnNote } from "../../consult/bench/wordsOfCauses";
import { type OpinionSample, sampleOpinions } from "./opinionSample";

/**
 * Asks about every note of the handbook on how a cause comes in, each as if nobody had written it: problems in the bench's
 * own words.
 *
 * Source: leave-one-out cross-validation, Stone 1974.
 */
export function sampleNotes(bench: Bench): OpinionSample[] {
  return [...bench.vocabulary.causes.values()].flatMap(({ id, toldAs, families }) =>
    toldAs.map((note) => {
      learnNote(bench, id, note, -1);
      try {
        return sampleOpinions(bench, { instrument: families[0] ?? "", says: note }, id);
      } finally {
        learnNote(bench, id, note, 1);
      }
    }),
  );
}
