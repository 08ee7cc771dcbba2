import type { NamedCause } from "./brierScore";

/** One row of the answer as it was filled in; blank where nothing was. */
export type AnswerRow = Readonly<{ cause: string; sure: string }>;

/** The named causes, or all that keeps the answer from being taken, in words. */
export type SettledAnswer =
  | Readonly<{ named: readonly NamedCause[]; problems: readonly [] }>
  | Readonly<{ named: undefined; problems: readonly string[] }>;

/**
 * Reads the causes that were named and how sure: whole or part hundredths that add up to at most 100. Rows left blank are
 * passed over; what is left to 100 is spread over the other causes.
 *
 * @param isCause whether an id is one of the causes to choose from
 */
export function settleAnswer(rows: readonly AnswerRow[], isCause: (id: string) => boolean): SettledAnswer {
  const filled = rows
    .map(({ cause, sure }) => ({ cause: cause.trim(), sure: sure.trim() }))
    .filter(({ cause, sure }) => cause !== "" || sure !== "");
  const problems: string[] = [];
  const named = filled.map(({ cause, sure }) => {
    const hundredths = /^\d{1,3}([.,]\d+)?$/.test(sure) ? Number(sure.replace(",", ".")) : Number.NaN;
    if (!isCause(cause)) {
      problems.push(
        cause === ""
          ? `A cause must go with how sure you are; there is ${sure} without one; choose it.`
          : `A cause must be one of the list; got '${cause}'; choose it anew.`,
      );
    }
    if (sure === "") problems.push("How sure you are must go with every cause; write it, in 100.");
    else if (!(hundredths > 0 && hundredths <= 100))
      problems.push(`How sure you are must be over 0 and at most 100; got '${sure}'; write a number.`);
    return { cause, sure: hundredths / 100 };
  });
  if (named.length === 0)
    problems.push("At least one cause must be named; none is; choose one and say how sure.");
  if (new Set(named.map(({ cause }) => cause)).size < named.length)
    problems.push("Each cause must be named once; one stands twice; leave one of them out.");
  const total = 100 * named.reduce((sum, { sure }) => sum + sure, 0);
  if (total > 100 + roundingHundredths)
    problems.push(`All together must be at most 100; got ${Math.round(total)}; take some away.`);
  return problems.length > 0 ? { named: undefined, problems } : { named, problems: [] };
}

/** Sums of decimals may come out over by less than this. */
const roundingHundredths = 1e-6;
