import type { Posterior } from "../../diagnosis/posterior";

/**
 * The cause most believed in.
 *
 * @param ids of the causes in the belief's order
 * @returns the first of equals; undefined where there is no cause
 */
export function leadingCause(
  { causes }: Posterior,
  ids: readonly string[],
): Readonly<{ cause: string; probability: number }> | undefined {
  const row = causes.indexOf(Math.max(...causes));
  const cause = ids[row];
  return cause === undefined ? undefined : { cause, probability: causes[row] ?? 0 };
}
