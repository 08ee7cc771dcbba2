/**
 * Proposes the id of a new case: the year's two digits and the next running number, as the shop's job book would.
 *
 * @param today year-month-day
 * @example proposeId(["26-007", "25-112"], "2026-11-25") // "26-008"
 */
export function proposeId(taken: Iterable<string>, today: string): string {
  return idProposer(taken)(today);
}

/** Proposes one id after another, by the day of each, without looking through those in use again; none is proposed twice. */
export function idProposer(taken: Iterable<string>): (day: string) => string {
  const highest = new Map<string, number>();
  for (const id of taken) {
    const [, year = "", number] = /^(\d\d)-(\d{1,6})$/.exec(id) ?? [];
    if (number !== undefined) highest.set(year, Math.max(highest.get(year) ?? 0, Number(number)));
  }
  return (day) => {
    const year = day.slice(2, 4);
    const number = (highest.get(year) ?? 0) + 1;
    highest.set(year, number);
    return `${year}-${String(number).padStart(3, "0")}`;
  };
}
