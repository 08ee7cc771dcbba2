import type { Case } from "../casebook/caseFile";
import { rootCauses } from "../casebook/rootCauses";
import { isCheckStep, isRepairStep } from "../casebook/step";
import { checksOfStep } from "../study/asking/checksOfStep";
import { appliesTo } from "../vocabulary/appliesTo";
import type { Vocabulary } from "../vocabulary/vocabulary";

/** Where the casebook has little to teach from; ids in the handbook's order. */
export type ThinPlaces = Readonly<{
  /** Causes at the root of fewer than three finished jobs, with how many there are. */
  causes: readonly Readonly<{ id: string; cases: number }>[];
  /** Checks that were made in no job. */
  checks: readonly string[];
  /** Repairs that were done in no job. */
  repairs: readonly string[];
}>;

/** From so many cases on a cause is more than an anecdote. Chosen. */
export const enoughCases = 3;

/**
 * Finds what the handbook tells of and the casebook hardly does.
 *
 * @param family whose part of the handbook is looked through; the whole where it is undefined
 */
export function thinPlaces(
  cases: Iterable<Case>,
  vocabulary: Vocabulary,
  family: string | undefined,
): ThinPlaces {
  const roots = new Map<string, number>();
  const checks = new Set<string>();
  const repairs = new Set<string>();
  /** Repairs with their results: what one answers, every one answers. */
  const trials = new Set<string>();
  for (const { status, causes, path } of cases) {
    if (status === "closed") {
      for (const id of rootCauses({ causes })) roots.set(id, (roots.get(id) ?? 0) + 1);
    }
    for (const step of path) {
      // Most steps are a plain check, which answers itself and nothing else, or a repair seen before.
      if (isCheckStep(step) && step.where === undefined && step.way === undefined) {
        checks.add(step.check);
        continue;
      }
      if (isRepairStep(step)) {
        repairs.add(step.repair);
        const trial = `${step.repair} ${step.result}`;
        if (trials.has(trial)) continue;
        trials.add(trial);
      }
      for (const id of checksOfStep(step, vocabulary)) checks.add(id);
    }
  }
  const serves = (entry: Readonly<{ families: readonly string[] }>) =>
    appliesTo(vocabulary, entry.families, family);
  const missing = (
    entries: Iterable<Readonly<{ id: string; families: readonly string[] }>>,
    met: ReadonlySet<string>,
  ) => [...entries].filter((entry) => serves(entry) && !met.has(entry.id)).map(({ id }) => id);
  return {
    causes: [...vocabulary.causes.values()]
      .filter(serves)
      .map(({ id }) => ({ id, cases: roots.get(id) ?? 0 }))
      .filter((cause) => cause.cases < enoughCases),
    checks: missing(vocabulary.checks.values(), checks),
    repairs: missing(vocabulary.repairs.values(), repairs),
  };
}
