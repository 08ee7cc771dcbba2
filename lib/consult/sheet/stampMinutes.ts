import type { Fields, StepRow } from "../../casebook/form/caseForm";
import { clockMinutes, clockTime } from "./clock";
import { readClock } from "./readClock";

/**
 * Gives steps that were just made the minutes of the job's clock, and sets the clock back to nought. Minutes that somebody
 * wrote go before the clock's; of several steps the last one takes them.
 *
 * @returns the steps, and the clock as a field to be written; no field where there is no clock
 */
export function stampMinutes(
  steps: readonly StepRow[],
  before: Fields,
  nowMs: number,
): Readonly<{ steps: readonly StepRow[]; fields: Fields }> {
  const clock = readClock(before);
  if (!clock) return { steps, fields: {} };
  const isWritten = steps.some(({ minutes }) => minutes.trim() !== "");
  const minutes = String(Math.round(clockMinutes(clock, nowMs)));
  const last = steps.length - 1;
  return {
    steps: isWritten ? steps : steps.map((step, at) => (at === last ? { ...step, minutes } : step)),
    fields: { clock: { minutes: 0, ...(clock.since === undefined ? {} : { since: clockTime(nowMs) }) } },
  };
}
