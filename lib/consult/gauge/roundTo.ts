/**
 * Rounds a number for an answer, keeping null for what nothing bounds.
 *
 * @param value any finite number, or null
 * @param digits decimals kept
 * @returns never -0
 * @example roundTo(1.005, 1) // 1
 */
export function roundTo<T extends number | null>(value: T, digits: number): T extends null ? T : number;
export function roundTo(value: number | null, digits: number): number | null {
  return value === null ? null : Number(value.toFixed(digits)) + 0;
}
