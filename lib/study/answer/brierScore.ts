/** One cause that was named, and how sure: 0..1. */
export type NamedCause = Readonly<{ cause: string; sure: number }>;

/**
 * Scores a stated confidence against what it was: the sum over all causes of (how sure - 1 if so, else 0) squared. What is
 * left to 1 is spread evenly over the causes that were not named, so that naming little is no way to a good score. Of two
 * root causes either is right: what was put on them counts together.
 *
 * @param named at most 1 in all
 * @param roots ids of the causes that it was
 * @param causes ids of all that it could have been; where every one was named, what is left stands for none of them
 * @returns 0 (sure and right) to 2 (sure and wrong), just under 1 for no idea: lower is better, and honest doubt is the best policy
 * @example brierScore([{ cause: "a", sure: 0.7 }], ["a"], ["a", "b", "c"]) // 0.3 ** 2 + 0.15 ** 2 + 0.15 ** 2
 * Source: Brier 1950.
 */
export function brierScore(
  named: readonly NamedCause[],
  roots: readonly string[],
  causes: readonly string[],
): number {
  const total = (some: readonly NamedCause[]) => some.reduce((sum, { sure }) => sum + sure, 0);
  const squares = (some: readonly NamedCause[]) => some.reduce((sum, { sure }) => sum + sure ** 2, 0);
  const left = Math.max(0, 1 - total(named));
  const said = new Set(named.map(({ cause }) => cause));
  const others = [...new Set([...causes, ...roots])].filter((cause) => !said.has(cause));
  const spread = others.map((cause) => ({ cause, sure: left / others.length }));
  const all = [...named, ...spread];
  const right = total(all.filter(({ cause }) => roots.includes(cause)));
  const wrong = squares(all.filter(({ cause }) => !roots.includes(cause)));
  return (right - 1) ** 2 + wrong + (others.length === 0 ? left ** 2 : 0);
}
