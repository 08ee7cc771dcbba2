import { rootCauses } from "../../casebook/rootCauses";
import type { Bench } from "../../consult/bench/bench";
import { withoutCase } from "../../consult/bench/withoutCase";
import { caseProblem } from "../../consult/record/caseProblem";
import type { OutcomeMeaning } from "../../reading/clauses/outcomeMeaning";
import { forgetNote } from "../../reading/clauses/spokenOutcomes";
import type { Check } from "../../vocabulary/check";
import { type OpinionSample, sampleOpinions } from "./opinionSample";

/**
 * Asks about every finished case with that case left out, four times: with its findings set down as such; with the same
 * findings as evidence in words; with them written out in the free text; and with half of them here and half there. Of the words every other one is a usual phrase of
 * the handbook, the rest are its notes, each as if nobody had written it.
 *
 * Source: leave-one-out cross-validation, Stone 1974.
 */
export function sampleCases(bench: Bench): OpinionSample[] {
  return [...bench.cases.values()].flatMap((kase, at) => {
    const [root] = rootCauses(kase);
    if (root === undefined) return [];
    const { instrument = "", says = "", evidence } = caseProblem(kase, bench.vocabulary);
    const told = evidence.flatMap(({ check, found }, step) => noteOn(bench, check, found, at + step) ?? []);
    return withoutCase(bench, kase, () => {
      const asked = [sampleOpinions(bench, { instrument, says, evidence }, root, kase.id)];
      for (const { meaning, note, isUsual } of told) if (!isUsual) forgetNote(bench.reader, meaning, note);
      try {
        const inWords = told.map(({ meaning, note }, step) => ({
          check: nameOf(meaning.check, at + step),
          found: note,
        }));
        const inText = [says, ...told.map(({ note }) => note)].join(". ");
        asked.push(sampleOpinions(bench, { instrument, says, evidence: inWords }, root, kase.id));
        asked.push(sampleOpinions(bench, { instrument, says: inText }, root, kase.id));
        const rest = told.filter((_, step) => step % 2 === 1);
        const partly = [says, ...rest.map(({ note }) => note)].join(". ");
        const here = inWords.filter((_, step) => step % 2 === 0);
        asked.push(sampleOpinions(bench, { instrument, says: partly, evidence: here }, root, kase.id));
      } finally {
        for (const { meaning, note, isUsual } of told)
          if (!isUsual) forgetNote(bench.reader, meaning, note, true);
      }
      return asked;
    });
  });
}

/** One of the names by which a check is called. */
function nameOf({ label, synonyms }: Check, turn: number): string {
  const names = [label, ...synonyms];
  return names[turn % names.length] ?? label;
}

/** One of the phrases or notes that tell of a finding; `turn` says which, so that all of them have theirs. */
function noteOn(
  { vocabulary }: Bench,
  checkId: string,
  outcomeId: string,
  turn: number,
): Readonly<{ meaning: OutcomeMeaning; note: string; isUsual: boolean }> | undefined {
  const check = vocabulary.checks.get(checkId);
  const outcome = check?.outcomes.find(({ id }) => id === outcomeId);
  if (!check || !outcome) return undefined;
  const isUsual = turn % 2 === 0 && outcome.synonyms.length > 0;
  const words = isUsual ? outcome.synonyms : outcome.toldAs;
  const note = words[Math.floor(turn / 2) % words.length];
  return note === undefined ? undefined : { meaning: { check, outcome }, note, isUsual };
}
