import Link from "next/link";
import { More } from "@/app/_components/More";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import type { LessonStanding } from "@/lib/casebook/lessonStandings";
import styles from "./Entry.module.css";

type Props = Readonly<{
  cases: readonly Case[];
  standings: ReadonlyMap<string, LessonStanding>;
  /** What to say where no lesson was tried; then nothing stands here by default. */
  none?: string;
}>;

const shownFirst = 8;

/** The lessons of cases that were put to the test in later jobs, and how often they held: those that failed most often first. */
export function LessonTried({ cases, standings, none }: Props) {
  const tried = cases
    .flatMap(({ id, lessons: [lesson] }) => {
      const standing = standings.get(id);
      return standing && lesson
        ? [{ id, lesson, held: standing.held.length, failed: standing.failed.length }]
        : [];
    })
    .sort((a, b) => b.failed - a.failed || b.held - a.held);
  if (tried.length === 0 && none === undefined) return null;
  const list = (some: typeof tried) => (
    <ul className={styles.list}>
      {some.map(({ id, lesson, held, failed }) => (
        <li key={id}>
          <Link href={`/casebook/${id}`} prefetch={false}>
            {lesson}
          </Link>
          <p className="small">
            Held in {held} of {held + failed} later {held + failed === 1 ? "job" : "jobs"} that tried it.
          </p>
        </li>
      ))}
    </ul>
  );
  return (
    <Section title="Lessons put to the test" aside={tried.length > 0 ? `${tried.length}` : undefined}>
      {tried.length === 0 ? <p className="small soft">{none}</p> : null}
      {list(tried.slice(0, shownFirst))}
      <More count={tried.length - shownFirst} of="lesson">
        {list(tried.slice(shownFirst))}
      </More>
    </Section>
  );
}
