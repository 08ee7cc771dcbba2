import type { Learner } from "../../casebook/learners/learnerFile";
import { jobsOf } from "./jobsOf";

/** A learner in one line. */
export type Standing = Readonly<{
  id: string;
  name: string;
  demo: boolean;
  jobs: number;
  sessions: number;
  /** Jobs that were got the last time, cleanly or not. */
  got: number;
  missed: number;
  nearly: number;
  /** Jobs to be seen again by the day asked about. */
  due: number;
  /** The day of the last session; null where there is none. */
  last: string | null;
}>;

/** Sums a learner up, as of a day. */
export function standingOf(learner: Learner, today: string): Standing {
  const { id, name, demo, sessions } = learner;
  const jobs = jobsOf(learner);
  const missed = jobs.filter(({ went }) => went === "missed").length;
  const nearly = jobs.filter(({ went }) => went === "nearly").length;
  return {
    id,
    name,
    demo,
    jobs: jobs.length,
    sessions: sessions.length,
    got: jobs.length - missed - nearly,
    missed,
    nearly,
    due: jobs.filter((job) => job.due <= today).length,
    last: sessions.reduce<string | null>((last, { day }) => (last === null || day > last ? day : last), null),
  };
}
