import { caseHref } from "@/app/study/_components/studyQuery";
import { wentWords } from "@/app/study/_components/wentWords";
import styles from "./LessonJobs.module.css";
import type { LessonJobView } from "./lessonJobViews";

/** The jobs of a lesson one under another, each with how it went. */
export function LessonJobs({ views, lesson }: Readonly<{ views: readonly LessonJobView[]; lesson: string }>) {
  return (
    <ol className={styles.jobs}>
      {views.map(({ id, place, instrument, complaint, isThere, went }) => (
        <li key={id}>
          <span className={styles.number}>{place}</span>
          <div>
            <h3>{isThere ? <a href={caseHref(id, lesson)}>{instrument}</a> : instrument}</h3>
            <p>{complaint}</p>
          </div>
          <span className={styles.went}>{went === null ? "" : wentWords[went]}</span>
        </li>
      ))}
    </ol>
  );
}
