import type { Check } from "../../vocabulary/check";
import type { Frequency } from "../../vocabulary/words";
import type { Bench } from "../bench/bench";
import { tellTales } from "./tellTales";

/** A cause that an outcome speaks for or against, and how often the two are met together. */
export type ToldCause = Readonly<{ id: string; label: string; often: Frequency; decibans: number }>;

/** What finding one outcome of a check would say: the causes that it speaks most for, and most against. */
export type OutcomeTells = Readonly<{
  outcome: string;
  for: readonly ToldCause[];
  against: readonly ToldCause[];
}>;

/** As many causes as one keeps in mind while looking. Chosen. */
const most = 6;
/** 3 decibels of evidence double the odds; less is not worth naming a cause for. */
const leastDecibans = 3;

/**
 * Says what each outcome of a check, found on the troubled part, tells about the causes.
 *
 * @returns the outcomes in the check's order; of each side at most six causes, the most told first, ties by id
 */
export function outcomeTells(check: Check, bench: Pick<Bench, "model" | "vocabulary">): OutcomeTells[] {
  const told = [...bench.vocabulary.causes.values()].flatMap((cause) =>
    check.id in cause.findings
      ? tellTales(cause, bench)
          .filter((one) => one.check === check.id && !one.others)
          .flatMap(({ tells }) => tells.map((tell) => ({ ...tell, id: cause.id, label: cause.label })))
      : [],
  );
  return check.outcomes.map(({ id }) => {
    const causes = told
      .filter(({ outcome, decibans }) => outcome === id && Math.abs(decibans) >= leastDecibans)
      .sort((a, b) => Math.abs(b.decibans) - Math.abs(a.decibans) || (a.id < b.id ? -1 : 1));
    return {
      outcome: id,
      for: causes.filter(({ decibans }) => decibans > 0).slice(0, most),
      against: causes.filter(({ decibans }) => decibans < 0).slice(0, most),
    };
  });
}
