import type { Case } from "../../casebook/caseFile";

const minuteMs = 60_000;
/** As many minutes as a case may say: two working weeks. */
const mostMinutes = 4800;

/**
 * What a job's clock stands at: the minutes that it holds and, where it runs, those since it was set going.
 *
 * @param nowMs the time now; where it lies before the start, nothing has run yet
 * @returns minutes, 0 to 4800
 * @example clockMinutes({ minutes: 5, since: "2026-03-09T14:00:00Z" }, Date.parse("2026-03-09T14:30:00Z")) // 35
 */
export function clockMinutes({ minutes, since }: NonNullable<Case["clock"]>, nowMs: number): number {
  const run = since === undefined ? 0 : Math.max(0, (nowMs - Date.parse(since)) / minuteMs);
  return Math.min(mostMinutes, minutes + run);
}

/** A time as a clock keeps it: in UTC, to the second. */
export const clockTime = (nowMs: number) => new Date(nowMs).toISOString().replace(/\.\d+Z$/, "Z");
