/**
 * Minutes as said at the bench.
 *
 * @param minutes zero or more
 * @returns minutes up to an hour and a half, hours and minutes beyond
 * @example formatMinutes(95) // "1 h 35"
 */
export function formatMinutes(minutes: number): string {
  const whole = Math.round(minutes);
  if (whole < 90) return `${whole} min`;
  const rest = whole % 60;
  return rest === 0 ? `${whole / 60} h` : `${Math.floor(whole / 60)} h ${String(rest).padStart(2, "0")}`;
}
