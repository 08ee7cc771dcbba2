import type { CaseCause } from "../../casebook/caseFile";

/** How much of the blame a cause in each role carries. What a repair brought on did not bring the instrument in. Chosen. */
const blame = { root: 1, contributing: 0.35, "brought-on": 0 } as const;

/** Divides the blame for a job among its causes; the shares add up to 1, or to 0 where no cause brought it in. */
export function causeShares(causes: readonly CaseCause[]): Readonly<{ id: string; share: number }>[] {
  const total = causes.reduce((sum, { role }) => sum + blame[role], 0);
  if (total === 0) return [];
  const shares = new Map<string, number>();
  for (const { cause, role } of causes) shares.set(cause, (shares.get(cause) ?? 0) + blame[role] / total);
  return [...shares].filter(([, share]) => share > 0).map(([id, share]) => ({ id, share }));
}
