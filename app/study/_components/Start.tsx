import { randomInt } from "node:crypto";
import Link from "next/link";
import { redirect } from "next/navigation";
import { StateNote } from "@/app/_components/StateNote";
import { today } from "@/app/_data/today";
import type { Learner } from "@/lib/casebook/learners/learnerFile";
import type { Lesson } from "@/lib/casebook/lessons/lessonFile";
import type { Bench } from "@/lib/consult/bench/bench";
import { fitJobs } from "@/lib/study/jobs/fitJobs";
import { pickCase } from "@/lib/study/jobs/pickCase";
import { dueList } from "@/lib/study/memory/dueList";
import { jobsOf } from "@/lib/study/memory/jobsOf";
import { listFamilies } from "@/lib/vocabulary/listFamilies";
import { Choose } from "./Choose";
import { DueJobs } from "./DueJobs";
import { dueViews } from "./dueViews";
import { Lessons } from "./Lessons";
import styles from "./Start.module.css";
import { caseHref, type StudyQuery, seeds, studyHref } from "./studyQuery";
import { Who } from "./Who";

type Props = Readonly<{
  query: StudyQuery;
  bench: Bench;
  learner: Learner | undefined;
  /** Whether somebody said who they are and their file cannot be read. */
  isLost: boolean;
  lessons: readonly Lesson[];
}>;

/** Sends on to the case whose turn it is, or offers what there is to study: what comes back, lessons, families. */
export function Start({ query, bench, learner, isLost, lessons }: Props) {
  const { vocabulary, cases } = bench;
  const fit = fitJobs(cases.values(), vocabulary);
  const jobs = learner ? jobsOf(learner) : [];
  if (query.seed !== null) {
    const chosen = query.family === null ? [...fit.values()].flat() : (fit.get(query.family) ?? []);
    const ids = chosen.map(({ id }) => id);
    // What was never met goes first; the order shrinks as jobs are met, so its head is always the next.
    const met = new Set(jobs.map((job) => job.case));
    const unmet = learner ? ids.filter((id) => !met.has(id)) : [];
    const picked = unmet.length > 0 ? pickCase(unmet, query.seed, 0) : pickCase(ids, query.seed, query.turn);
    if (picked !== undefined) redirect(studyHref({ ...query, case: picked, asked: [] }));
  }
  const isThere = new Set([...fit.values()].flat().map(({ id }) => id));
  const due = dueList(jobs, today(), (id) => isThere.has(id));
  const families = listFamilies(vocabulary)
    .map(({ id, label }) => ({ id, label, cases: fit.get(id)?.length ?? 0 }))
    .filter((family) => family.cases > 0);
  const [next] = due.now;
  return (
    <>
      <h1>Study</h1>
      <p className={styles.lead}>
        A past job comes in as it came in. Ask for one check at a time; each answers at once and its minutes
        are spent. Say what you think it is whenever you are ready. Then see how it went.
      </p>
      {isLost ? (
        <StateNote title="Your file cannot be read" tone="fail" level={2}>
          <p>
            Until it is mended nothing is kept. <Link href="/study/learners">All learners</Link> says what is
            wrong with it; or go on under another name.
          </p>
        </StateNote>
      ) : null}
      <Who learner={learner} jobs={jobs.length} />
      {learner ? (
        <DueJobs now={dueViews(due.now, cases, vocabulary)} later={dueViews(due.later, cases, vocabulary)} />
      ) : null}
      <Choose
        families={families}
        total={isThere.size}
        seed={randomInt(seeds)}
        again={next ? caseHref(next.case) : null}
      />
      <Lessons lessons={lessons} jobs={jobs} />
    </>
  );
}
