import { findingOf } from "./saying";
import type { Vocabulary } from "./vocabulary";

type Known = Readonly<{ has: (id: string) => boolean }>;

const only = (ids: readonly string[], known: Known) => ids.filter((id) => known.has(id));
const ifKnown = (id: string | undefined, known: Known) =>
  id !== undefined && known.has(id) ? id : undefined;

/** The entries of a record whose keys are known. */
const pick = <Value>(record: Readonly<Record<string, Value>>, known: Known): Record<string, Value> =>
  Object.fromEntries(Object.entries(record).filter(([id]) => known.has(id)));

const each = <Entry>(entries: ReadonlyMap<string, Entry>, mend: (entry: Entry) => Entry) =>
  new Map([...entries].map(([id, entry]) => [id, mend(entry)]));

/**
 * A vocabulary in which every id names something: the ids that name nothing are left out, and with them no more than they
 * would have said. So one slip of the pen stops nobody's work; `findBrokenReferences` tells of it.
 */
export function leaveOutBroken(vocabulary: Vocabulary): Vocabulary {
  const { instruments, parts, checks, causes, repairs, cautions, sayings, causeNotes } = vocabulary;
  const outcomesOf = (check: string): Known => new Set(checks.get(check)?.outcomes.map(({ id }) => id) ?? []);
  const isFinding = ({ check, outcome }: Readonly<{ check: string; outcome: string }>) =>
    outcomesOf(check).has(outcome);
  const place = <Entry extends Readonly<{ families: string[]; parts: string[] }>>(entry: Entry) => ({
    families: only(entry.families, instruments),
    parts: only(entry.parts, parts),
  });
  const tells = <Words>(told: Readonly<Record<string, Readonly<Record<string, Words>>>>) =>
    Object.fromEntries(
      Object.entries(pick(told, checks)).map(([check, words]) => [check, pick(words, outcomesOf(check))]),
    );
  return {
    ...vocabulary,
    instruments: each(instruments, (one) => ({ ...one, places: pick(one.places, parts) })),
    parts: each(parts, (one) => ({
      ...one,
      families: only(one.families, instruments),
      swapsInto: ifKnown(one.swapsInto, parts),
      belongsTo: ifKnown(one.belongsTo, parts),
    })),
    checks: each(checks, (one) => ({
      ...one,
      ...place(one),
      needs: only(one.needs, checks),
      triedBy: only(one.triedBy, repairs),
      cautions: only(one.cautions, cautions),
      normal: ifKnown(one.normal, outcomesOf(one.id)),
      outcomes: one.outcomes.map((outcome) => ({
        ...outcome,
        denied: ifKnown(outcome.denied, outcomesOf(one.id)),
        unless: outcome.unless.filter(isFinding),
      })),
    })),
    causes: each(causes, (one) => ({
      ...one,
      ...place(one),
      findings: tells(one.findings),
      others: tells(one.others),
      mistakenFor: only(one.mistakenFor, causes),
      repairs: only(one.repairs, repairs),
    })),
    repairs: each(repairs, (one) => ({
      ...one,
      ...place(one),
      cautions: only(one.cautions, cautions),
      checkFirst: one.checkFirst.filter(({ check }) => checks.has(check)),
      proof: one.proof.filter(isFinding),
    })),
    causeNotes: new Map([...causeNotes].filter(([cause]) => causes.has(cause))),
    sayings: sayings
      .filter(({ instrument }) => instruments.has(instrument))
      .map((one) => ({
        ...one,
        means: one.means.filter(isFinding),
        also: one.also.filter((told) => isFinding(findingOf(told))),
      })),
  };
}
