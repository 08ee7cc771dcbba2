import type { Posterior } from "../../diagnosis/posterior";

/** Belief drawn as lines: one a cause, each with its probability before the first check and after every one. */
export type BeliefLine = Readonly<{ cause: string; probabilities: readonly number[] }>;

/** More lines are not told apart at a glance. */
const mostLines = 4;

/**
 * Chooses the causes whose lines are worth drawing: the roots, those that were named, then those most believed in at any
 * time (ties by id).
 *
 * @param ids of the causes in the beliefs' order
 * @returns at most four lines; a cause that the model does not know has none
 */
export function beliefLines(
  beliefs: readonly Posterior[],
  ids: readonly string[],
  roots: readonly string[],
  named: readonly string[],
): BeliefLine[] {
  const most = (row: number) => Math.max(...beliefs.map(({ causes }) => causes[row] ?? 0));
  const believed = ids
    .map((id, row) => ({ id, most: most(row) }))
    .filter((one) => one.most > 0)
    .sort((a, b) => b.most - a.most || (a.id < b.id ? -1 : 1))
    .map(({ id }) => id);
  return [...new Set([...roots, ...named, ...believed])]
    .filter((id) => ids.includes(id))
    .slice(0, mostLines)
    .map((cause) => {
      const row = ids.indexOf(cause);
      return { cause, probabilities: beliefs.map(({ causes }) => causes[row] ?? 0) };
    });
}
