import type { Case } from "../../casebook/caseFile";
import { isRepairStep } from "../../casebook/step";
import { estimateMinutes, type MinutesEstimate } from "../../estimate/estimateMinutes";
import { isFinished } from "../record/isFinished";

/**
 * How long a repair took in finished jobs; done several times in one job its minutes add up. Jobs in which none were written
 * down do not count.
 *
 * @returns undefined where no job tells
 */
export function repairMinutes(cases: Iterable<Case>, repair: string): MinutesEstimate | undefined {
  const jobs = [...cases].filter(isFinished).map(({ path }) =>
    path
      .filter(isRepairStep)
      .filter((step) => step.repair === repair)
      .reduce((sum, { minutes }) => sum + minutes, 0),
  );
  return estimateMinutes(jobs.filter((minutes) => minutes > 0).map((minutes) => ({ minutes, weight: 1 })));
}
