import { waysItWent } from "./howItWent";
import type { StudiedJob } from "./jobsOf";

/** What is to be seen again: now, and in the days to come. */
export type DueList = Readonly<{
  /** The one that waits longest first; of the same day the one that went worst, then by case. */
  now: readonly StudiedJob[];
  /** In the order of their days. */
  later: readonly StudiedJob[];
}>;

/**
 * Parts a learner's jobs into those to be seen again by a day and those that can wait.
 *
 * @param today year-month-day
 * @param isThere whether a case can still be worked through; others are left out
 */
export function dueList(
  jobs: readonly StudiedJob[],
  today: string,
  isThere: (id: string) => boolean = () => true,
): DueList {
  const sorted = jobs
    .filter((job) => isThere(job.case))
    .sort((a, b) => compare(a.due, b.due) || worst(a) - worst(b) || compare(a.case, b.case));
  return { now: sorted.filter(({ due }) => due <= today), later: sorted.filter(({ due }) => due > today) };
}

const compare = (a: string, b: string) => (a < b ? -1 : a > b ? 1 : 0);
const worst = ({ went }: StudiedJob) => waysItWent.indexOf(went);
