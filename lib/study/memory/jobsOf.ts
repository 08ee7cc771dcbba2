import type { Learner, LearnerSession } from "../../casebook/learners/learnerFile";
import { comesBack } from "./comesBack";
import { type HowItWent, howItWent } from "./howItWent";

/** A past job as one learner stands to it. */
export type StudiedJob = Readonly<{
  case: string;
  sessions: readonly LearnerSession[];
  /** How the last session went, and on which day. */
  went: HowItWent;
  last: string;
  /** The day from which on it should be seen again. */
  due: string;
}>;

/** What each list of sessions came to, kept as long as the list is: a learner is asked about far more often than they study. */
const known = new WeakMap<Learner["sessions"], readonly StudiedJob[]>();

/** The jobs that a learner has worked through, each once, in the order in which they were first met. */
export function jobsOf({ sessions }: Pick<Learner, "sessions">): readonly StudiedJob[] {
  const before = known.get(sessions);
  if (before) return before;
  const jobs = readJobs(sessions);
  known.set(sessions, jobs);
  return jobs;
}

function readJobs(sessions: readonly LearnerSession[]): StudiedJob[] {
  const byCase = new Map<string, LearnerSession[]>();
  for (const session of sessions) {
    const before = byCase.get(session.case);
    if (before) before.push(session);
    else byCase.set(session.case, [session]);
  }
  return [...byCase].flatMap(([id, unsorted]) => {
    // A file put together by hand or by a merge may hold them in any order.
    const own = [...unsorted].sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
    const last = own.at(-1);
    const due = comesBack(own);
    return last && due ? [{ case: id, sessions: own, went: howItWent(last), last: last.day, due }] : [];
  });
}
