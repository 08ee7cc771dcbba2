/** One cause that was named, and how sure: 0..1. */
export type NamedCause = Readonly<{ cause: string; sure: number }>;

/**
 * Scores a stated confidence against what it was: the sum over the named causes, and over "something else", of
 * (how sure - 1 if so, else 0) squared. What is left to 1 was put on something else. Of two root causes either is right:
 * what was put on them counts together.
 *
 * @param named at most 1 in all
 * @param roots ids of the causes that it was
 * @returns 0 (sure and right) to 2 (sure and wrong): lower is better, and honest doubt is the best policy
 * @example brierScore([{ cause: "a", sure: 0.7 }], ["a"]) // 0.3 ** 2 + 0.3 ** 2
 * Source: Brier 1950.
 */
export function brierScore(named: readonly NamedCause[], roots: readonly string[]): number {
  const right = named.filter(({ cause }) => roots.includes(cause));
  const wrong = named.filter(({ cause }) => !roots.includes(cause));
  const total = (some: readonly NamedCause[]) => some.reduce((sum, { sure }) => sum + sure, 0);
  const elsewhere = Math.max(0, 1 - total(named));
  const missed = right.length === 0 ? 1 : 0;
  return (
    (right.length === 0 ? 0 : (total(right) - 1) ** 2) +
    wrong.reduce((sum, { sure }) => sum + sure ** 2, 0) +
    (elsewhere - missed) ** 2
  );
}
