import type { LikeJobs } from "../answer";

/**
 * Says in plain words how often a repair went wrong, in which jobs that was counted, and how sure it is.
 *
 * @param like null where it was done in no case
 * @returns one sentence without its full stop
 * @example harmWords({ done: 14, harmed: 2, among: "like", family: null, low: 0.0309, high: 0.3849 })
 * // "2 of 14 jobs like this one went wrong; fairly sure between 3 and 38 in a hundred"
 */
export function harmWords(like: LikeJobs | null): string {
  if (!like) return "Done in no case yet: how often it goes wrong is not known";
  const { done, harmed, low, high } = like;
  const jobs = `${done} ${done === 1 ? "job" : "jobs"} ${whichJobs(like)} went wrong`;
  if (harmed === 0) return `None of ${jobs}; fairly sure under ${inHundred(high)} in a hundred`;
  const sure =
    harmed === done ? `over ${inHundred(low)}` : `between ${inHundred(low)} and ${inHundred(high)}`;
  return `${harmed} of ${jobs}; fairly sure ${sure} in a hundred`;
}

function whichJobs({ among, family }: LikeJobs): string {
  if (among === "like") return "like this one";
  return family === null ? "of any kind" : `on ${family.charAt(0).toLowerCase()}${family.slice(1)}`;
}

/** Never rounded to never: what is under a half is said to be less than one. */
const inHundred = (share: number) => (share < 0.005 ? "less than 1" : String(Math.round(100 * share)));
