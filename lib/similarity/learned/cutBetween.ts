/**
 * A cut point between two numbers, without overflow; never the upper one, so that it parts them.
 *
 * @example cutBetween(1, 2) // 1.5
 */
export function cutBetween(below: number, above: number): number {
  const middle = below / 2 + above / 2;
  return middle < above ? middle : below;
}
