import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { formatDay } from "@/app/_components/formatDay";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import { StateNote } from "@/app/_components/StateNote";
import { learnerOf } from "@/app/_data/currentLearner";
import { getShop } from "@/app/_data/shop";
import { today } from "@/app/_data/today";
import { DueJobs } from "@/app/study/_components/DueJobs";
import { dueViews } from "@/app/study/_components/dueViews";
import { dueList } from "@/lib/study/memory/dueList";
import { jobsOf } from "@/lib/study/memory/jobsOf";
import { kindsOfCases } from "@/lib/study/memory/kindsOfCases";
import { progressBy } from "@/lib/study/memory/progressBy";
import { CauseLink } from "../_components/CauseLink";
import { ExportLinks } from "../_components/ExportLinks";
import { ProgressTable } from "../_components/ProgressTable";
import { progressRows } from "../_components/progressRows";
import { SessionsTable } from "../_components/SessionsTable";

type Props = Readonly<{ params: Promise<{ id: string }> }>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: learnerOf((await params).id)?.name ?? "Not here" };
}

/** How one learner stands: what comes back, by family, by cause, and session by session. */
export default async function LearnerPage({ params }: Props) {
  const learner = learnerOf((await params).id);
  if (!learner) notFound();
  const { bench, vocabulary } = await getShop();
  const day = today();
  const jobs = jobsOf(learner);
  const due = dueList(jobs, day, (id) => bench.cases.has(id));
  const { family, cause } = kindsOfCases(bench.cases, vocabulary);
  const views = (some: typeof due.now) => dueViews(some, bench.cases, vocabulary);
  return (
    <main className="page" id="main">
      <p className="unprinted">
        <Link href="/study">Study</Link> · <Link href="/study/learners">Learners</Link>
      </p>
      <h1>{learner.name}</h1>
      <p className="soft">
        {learner.demo ? "Demo learner, invented. " : ""}Studying since {formatDay(learner.since)};{" "}
        {learner.sessions.length} {learner.sessions.length === 1 ? "session" : "sessions"} with {jobs.length}{" "}
        {jobs.length === 1 ? "job" : "jobs"}
      </p>
      {jobs.length === 0 ? (
        <StateNote title="Nothing has been worked through yet" level={2}>
          <p>
            Every answer that is given on the page <Link href="/study">Study</Link> is kept here.
          </p>
        </StateNote>
      ) : (
        <>
          <DueJobs now={views(due.now)} later={views(due.later)} />
          <Section title="By family" aside="each job as it went last; what is most in need first">
            <ProgressTable
              kind="Family"
              rows={progressRows(progressBy(jobs, family, day), (id) => labelOf(vocabulary.instruments, id))}
            />
          </Section>
          <Section title="By cause" aside="what it was">
            <ProgressTable
              kind="It was"
              rows={progressRows(progressBy(jobs, cause, day), (id) => (
                <CauseLink id={id} vocabulary={vocabulary} />
              ))}
            />
          </Section>
          <SessionsTable learner={learner} cases={bench.cases} vocabulary={vocabulary} />
          <ExportLinks learner={learner.id} />
        </>
      )}
    </main>
  );
}
