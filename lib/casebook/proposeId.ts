/**
 * Proposes the id of a new case: the year's two digits and the next running number, as the shop's job book would.
 *
 * @param today year-month-day
 * @example proposeId(["26-007", "25-112"], "2026-11-25") // "26-008"
 */
export function proposeId(taken: Iterable<string>, today: string): string {
  const year = today.slice(2, 4);
  let highest = 0;
  for (const id of taken) {
    const number = new RegExp(`^${year}-(\\d{1,6})$`).exec(id)?.[1];
    if (number !== undefined) highest = Math.max(highest, Number(number));
  }
  return `${year}-${String(highest + 1).padStart(3, "0")}`;
}
