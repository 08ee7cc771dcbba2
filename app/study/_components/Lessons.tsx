import Link from "next/link";
import { Section } from "@/app/_components/Section";
import type { Lesson } from "@/lib/casebook/lessons/lessonFile";
import type { StudiedJob } from "@/lib/study/memory/jobsOf";
import styles from "./Choose.module.css";

/** The lessons there are, each with how far one is, and where a teacher builds another. */
export function Lessons({
  lessons,
  jobs,
}: Readonly<{ lessons: readonly Lesson[]; jobs: readonly StudiedJob[] }>) {
  const met = new Set(jobs.map((job) => job.case));
  return (
    <Section
      title="Lessons"
      aside={
        <Link href="/study/lessons/build" prefetch={false}>
          Build a lesson
        </Link>
      }
    >
      {lessons.length === 0 ? <p className="soft">No lesson has been put together yet.</p> : null}
      <ul className={styles.families}>
        {lessons.map(({ id, title, cases }) => (
          <li key={id}>
            <Link href={`/study/lessons/${id}`} prefetch={false}>
              <b>{title}</b>
              <span>{sayProgress(cases.filter((one) => met.has(one)).length, cases.length)}</span>
            </Link>
          </li>
        ))}
      </ul>
    </Section>
  );
}

const sayProgress = (met: number, all: number) =>
  met === 0 ? `${all} ${all === 1 ? "job" : "jobs"}` : `${met} of ${all}`;
