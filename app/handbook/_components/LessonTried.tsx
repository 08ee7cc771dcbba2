import Link from "next/link";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import type { LessonStanding } from "@/lib/casebook/lessonStandings";
import styles from "./Entry.module.css";

type Props = Readonly<{
  cases: readonly Case[];
  standings: ReadonlyMap<string, LessonStanding>;
}>;

/** The lessons of a cause's cases that were put to the test in later jobs, and how often they held. */
export function LessonTried({ cases, standings }: Props) {
  const tried = cases.flatMap(({ id, lessons: [lesson] }) => {
    const standing = standings.get(id);
    return standing && lesson ? [{ id, lesson, ...standing }] : [];
  });
  if (tried.length === 0) return null;
  return (
    <Section title="Lessons put to the test">
      <ul className={styles.list}>
        {tried.map(({ id, lesson, held, failed }) => (
          <li key={id}>
            <Link href={`/casebook/${id}`} prefetch={false}>
              {lesson}
            </Link>
            <p className="small">
              Held in {held.length} of {held.length + failed.length} later jobs that tried it.
            </p>
          </li>
        ))}
      </ul>
    </Section>
  );
}
