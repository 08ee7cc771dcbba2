import type { Learner } from "../../casebook/learners/learnerFile";
import { howItWent } from "./howItWent";
import { jobsOf } from "./jobsOf";

/** A session as one row of a table, everything in words and numbers that stand by themselves. */
export type SessionRow = Readonly<{
  learner: string;
  name: string;
  demo: boolean;
  day: string;
  case: string;
  went: string;
  verdict: string;
  /** `casing-dented 0.7; piston-bent 0.2` */
  said: string;
  score: number;
  checks: number;
  minutes: number;
  atStakeMinutes: number;
  recordMinutes: number;
  recordAtStakeMinutes: number;
  tooSoon: number;
  lesson: string;
  /** The day on which the job comes back, as things stand now. */
  comesBack: string;
}>;

/** Lays a learner's sessions out as rows, in the file's order. */
export function sessionRows(learner: Learner): SessionRow[] {
  const { id, name, demo, sessions } = learner;
  const due = new Map(jobsOf(learner).map((job) => [job.case, job.due]));
  return sessions.map((session) => ({
    learner: id,
    name,
    demo,
    day: session.day,
    case: session.case,
    went: howItWent(session),
    verdict: session.verdict,
    said: session.said.map(({ cause, sure }) => `${cause} ${sure}`).join("; "),
    score: session.score,
    checks: session.checks,
    minutes: session.minutes,
    atStakeMinutes: session.atStake,
    recordMinutes: session.recordMinutes,
    recordAtStakeMinutes: session.recordAtStake,
    tooSoon: session.tooSoon,
    lesson: session.lesson ?? "",
    comesBack: due.get(session.case) ?? "",
  }));
}
