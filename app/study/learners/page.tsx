import type { Metadata } from "next";
import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { StateNote } from "@/app/_components/StateNote";
import { learnerShelf } from "@/app/_data/learnerShelf";
import { getShop } from "@/app/_data/shop";
import { today } from "@/app/_data/today";
import { formatProblem } from "@/lib/document/contentProblem";
import { jobsOf } from "@/lib/study/memory/jobsOf";
import { kindsOfCases } from "@/lib/study/memory/kindsOfCases";
import { progressBy } from "@/lib/study/memory/progressBy";
import { standingOf } from "@/lib/study/memory/standingOf";
import { matchesWords } from "@/lib/text/matchesWords";
import { CauseLink } from "./_components/CauseLink";
import { ExportLinks } from "./_components/ExportLinks";
import { FindLearners } from "./_components/FindLearners";
import { LearnersTable } from "./_components/LearnersTable";
import styles from "./_components/LearnerTables.module.css";
import { learnersHref, orders, readLearnersQuery } from "./_components/learnersQuery";
import { ProgressTable } from "./_components/ProgressTable";
import { progressRows } from "./_components/progressRows";

export const metadata: Metadata = { title: "Learners" };

const onAPage = 50;
/** As many causes as one plans a week's teaching by. */
const causesShown = 12;

type Props = Readonly<{ searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>> }>;

/** The teacher's view: everybody who studies, how they stand, and what the shop misses most. */
export default async function LearnersPage({ searchParams }: Props) {
  const query = readLearnersQuery(await searchParams);
  const { bench, vocabulary } = await getShop();
  const { entries, problems } = learnerShelf().all();
  const day = today();
  const all = entries.map((learner) => standingOf(learner, day));
  const found = all
    .filter(({ name, id }) => matchesWords(`${name} ${id}`, query.find))
    .sort(orders[query.order].compare);
  const pages = Math.max(1, Math.ceil(found.length / onAPage));
  const page = Math.min(query.page, pages);
  const { cause } = kindsOfCases(bench.cases, vocabulary);
  const missed = progressBy(entries.flatMap(jobsOf), cause, day).filter(
    ({ went }) => went.missed + went.nearly > 0,
  );
  return (
    <main className="page" id="main">
      <p className="unprinted">
        <Link href="/study">Study</Link>
      </p>
      <h1>Learners</h1>
      {entries.length === 0 ? (
        <StateNote title="Nobody has said who they are yet" level={2}>
          <p>
            Whoever gives a name on the page <Link href="/study">Study</Link> stands here from then on.
          </p>
        </StateNote>
      ) : null}
      {problems.length > 0 ? (
        <StateNote title="Some files could not be read" tone="warn" level={2}>
          <ul>
            {problems.slice(0, onAPage).map((problem) => (
              <li key={formatProblem(problem)}>{formatProblem(problem)}</li>
            ))}
          </ul>
        </StateNote>
      ) : null}
      {entries.length > 0 ? (
        <>
          <Section title="How they stand" aside={`${found.length} of ${all.length}`}>
            <FindLearners query={query} />
            <LearnersTable learners={found.slice((page - 1) * onAPage, page * onAPage)} />
            {pages > 1 ? (
              <nav className={`${styles.pages} unprinted`} aria-label="Pages">
                {page > 1 ? (
                  <a className={controls.plain} href={learnersHref({ ...query, page: page - 1 })}>
                    Before
                  </a>
                ) : null}
                <span>
                  Page {page} of {pages}
                </span>
                {page < pages ? (
                  <a className={controls.plain} href={learnersHref({ ...query, page: page + 1 })}>
                    Next
                  </a>
                ) : null}
              </nav>
            ) : null}
          </Section>
          <Section title="What is missed most" aside="causes, over all learners; each job as it went last">
            {missed.length === 0 ? <p className="soft">Nothing was missed so far.</p> : null}
            {missed.length > 0 ? (
              <ProgressTable
                kind="It was"
                rows={progressRows(missed.slice(0, causesShown), (id) => (
                  <CauseLink id={id} vocabulary={vocabulary} toBuild />
                ))}
              />
            ) : null}
          </Section>
          <ExportLinks learner={null} />
        </>
      ) : null}
    </main>
  );
}
