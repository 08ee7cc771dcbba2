import type { ContentProblem } from "../document/contentProblem";
import { nearestWord } from "../document/nearestWord";
import type { Check } from "./check";
import { findingOf } from "./saying";
import type { Vocabulary } from "./vocabulary";

type Known = Readonly<{ has: (id: string) => boolean; keys: () => Iterable<string> }>;

/**
 * Finds every id in the vocabulary that names nothing: a cause's unknown check, a repair's unknown caution, a check
 * whose `normal` is not among its outcomes.
 *
 * @returns one problem a broken reference; `file` names the kind and entry, such as `causes/gummed-oil`
 */
export function findBrokenReferences(vocabulary: Vocabulary): ContentProblem[] {
  const problems: ContentProblem[] = [];
  const at = (file: string) => ({
    known(field: string, ids: Iterable<string>, known: Known, what: string) {
      for (const id of ids) {
        if (known.has(id)) continue;
        const meant = nearestWord(id, known.keys());
        const expected = meant ? `'${meant}', or another known ${what}` : `the id of a known ${what}`;
        problems.push({ file, line: 0, field, received: `'${id}'`, expected });
      }
    },
  });
  const { instruments, parts, checks, causes, repairs, cautions, sayings, causeNotes } = vocabulary;

  for (const instrument of instruments.values()) {
    at(`instruments/${instrument.id}`).known("places", Object.keys(instrument.places), parts, "part");
  }
  for (const part of parts.values()) {
    const entry = at(`parts/${part.id}`);
    entry.known("families", part.families, instruments, "instrument");
    entry.known("swapsInto", part.swapsInto ? [part.swapsInto] : [], parts, "part");
    entry.known("belongsTo", part.belongsTo ? [part.belongsTo] : [], parts, "part");
  }
  for (const check of checks.values()) {
    const entry = at(`checks/${check.id}`);
    const outcomes = outcomesOf(check);
    entry.known("families", check.families, instruments, "instrument");
    entry.known("parts", check.parts, parts, "part");
    entry.known("needs", check.needs, checks, "check");
    entry.known("triedBy", check.triedBy, repairs, "repair");
    entry.known("cautions", check.cautions, cautions, "caution");
    entry.known("normal", check.normal ? [check.normal] : [], outcomes, "outcome of this check");
    const denied = check.outcomes.flatMap((outcome) => outcome.denied ?? []);
    entry.known("outcomes.denied", denied, outcomes, "outcome of this check");
    for (const { check: id, outcome } of check.outcomes.flatMap(({ unless }) => unless)) {
      const other = checks.get(id);
      entry.known("outcomes.unless", [id], checks, "check");
      if (other) entry.known(`outcomes.unless.${id}`, [outcome], outcomesOf(other), "outcome of this check");
    }
  }
  for (const cause of causes.values()) {
    const entry = at(`causes/${cause.id}`);
    entry.known("families", cause.families, instruments, "instrument");
    entry.known("parts", cause.parts, parts, "part");
    entry.known("mistakenFor", cause.mistakenFor, causes, "cause");
    entry.known("repairs", cause.repairs, repairs, "repair");
    for (const [field, tellTales] of [
      ["findings", cause.findings] as const,
      ["others", cause.others] as const,
    ]) {
      entry.known(field, Object.keys(tellTales), checks, "check");
      for (const [id, words] of Object.entries(tellTales)) {
        const check = checks.get(id);
        if (check)
          entry.known(`${field}.${id}`, Object.keys(words), outcomesOf(check), "outcome of this check");
      }
    }
  }
  for (const repair of repairs.values()) {
    const entry = at(`repairs/${repair.id}`);
    entry.known("families", repair.families, instruments, "instrument");
    entry.known("parts", repair.parts, parts, "part");
    entry.known("cautions", repair.cautions, cautions, "caution");
    entry.known(
      "checkFirst",
      repair.checkFirst.map(({ check }) => check),
      checks,
      "check",
    );
    for (const { check: id, outcome } of repair.proof) {
      const check = checks.get(id);
      entry.known("proof", [id], checks, "check");
      if (check) entry.known(`proof.${id}`, [outcome], outcomesOf(check), "outcome of this check");
    }
  }
  for (const cause of causeNotes.keys()) at(`notes of ${cause}`).known("cause", [cause], causes, "cause");
  for (const { says, instrument, means, also } of sayings) {
    const entry = at(`sayings "${says}"`);
    entry.known("instrument", [instrument], instruments, "instrument");
    for (const [field, { check: id, outcome }] of [
      ...means.map((told) => ["means", told] as const),
      ...also.map((told) => ["also", findingOf(told)] as const),
    ]) {
      const check = checks.get(id);
      entry.known(field, [id], checks, "check");
      if (check) entry.known(`${field}.${id}`, [outcome], outcomesOf(check), "outcome of this check");
    }
  }
  return problems;
}

const outcomesOf = (check: Check): Known => new Map(check.outcomes.map((outcome) => [outcome.id, outcome]));
