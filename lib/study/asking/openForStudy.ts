import { appliesTo } from "../../vocabulary/appliesTo";
import type { Check } from "../../vocabulary/check";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/** A check that can still be asked for, and the checks that must come first because they open the way. */
export type StudyCheck = Readonly<{ check: Check; first: readonly string[] }>;

/**
 * Lists the checks that make sense on an instrument and are not settled, with what has to come before each. Their order
 * gives nothing away: by risk class, then by label.
 *
 * @param settled checks asked for or answered already
 * @returns `first` empty where the check can be asked for now
 */
export function openForStudy(
  vocabulary: Vocabulary,
  instrument: string,
  settled: ReadonlySet<string>,
): StudyCheck[] {
  return [...vocabulary.checks.values()]
    .filter((check) => !settled.has(check.id) && appliesTo(vocabulary, check.families, instrument))
    .map((check) => ({ check, first: check.needs.filter((id) => !settled.has(id)) }))
    .sort(({ check: a }, { check: b }) => a.risk - b.risk || (a.label < b.label ? -1 : 1));
}
