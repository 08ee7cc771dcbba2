import type { HowItWent } from "./howItWent";
import type { StudiedJob } from "./jobsOf";

/** How jobs of one kind stand: each counted once, as it went last. */
export type Progress = Readonly<{
  /** The family or the cause. */
  key: string;
  jobs: number;
  went: Readonly<Record<HowItWent, number>>;
  /** Sessions in all. */
  sessions: number;
  /** Jobs that are to be seen again by the day asked about. */
  due: number;
}>;

/**
 * Counts jobs by family, by cause, or whatever else.
 *
 * @param keysOf the kinds that a job counts under; none leaves it out
 * @returns most in need first: the greatest share missed or nearly got, then most jobs, then by key
 */
export function progressBy(
  jobs: readonly StudiedJob[],
  keysOf: (caseId: string) => readonly string[],
  today: string,
): Progress[] {
  const byKey = new Map<string, StudiedJob[]>();
  // Many learners meet the same case.
  const keysOfCase = new Map<string, readonly string[]>();
  for (const job of jobs) {
    const keys = keysOfCase.get(job.case) ?? keysOf(job.case);
    keysOfCase.set(job.case, keys);
    for (const key of keys) {
      const before = byKey.get(key);
      if (before) before.push(job);
      else byKey.set(key, [job]);
    }
  }
  return [...byKey]
    .map(([key, own]) => {
      const count = (went: HowItWent) => own.filter((job) => job.went === went).length;
      return {
        key,
        jobs: own.length,
        went: {
          missed: count("missed"),
          nearly: count("nearly"),
          "got it": count("got it"),
          "got it cleanly": count("got it cleanly"),
        },
        sessions: own.reduce((sum, { sessions }) => sum + sessions.length, 0),
        due: own.filter(({ due }) => due <= today).length,
      };
    })
    .sort((a, b) => inNeed(b) - inNeed(a) || b.jobs - a.jobs || (a.key < b.key ? -1 : 1));
}

const inNeed = ({ went, jobs }: Progress) => (went.missed + went.nearly / 2) / jobs;
