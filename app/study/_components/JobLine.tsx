import Link from "next/link";
import job from "@/app/_components/JobPage.module.css";
import { labelOf } from "@/app/_components/labelOf";
import type { Learner } from "@/lib/casebook/learners/learnerFile";
import type { Lesson } from "@/lib/casebook/lessons/lessonFile";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./JobLine.module.css";
import type { StudyQuery } from "./studyQuery";

type Props = Readonly<{
  query: StudyQuery;
  learner: Learner | undefined;
  lesson: Lesson | undefined;
  vocabulary: Vocabulary;
}>;

/** Which sitting the job on the page belongs to, and whose it is. */
export function JobLine({ query, learner, lesson, vocabulary }: Props) {
  const at = lesson?.cases.indexOf(query.case ?? "") ?? -1;
  return (
    <p className={job.job}>
      <b>Study</b>
      {lesson ? (
        <span>
          <Link href={`/study/lessons/${lesson.id}`} prefetch={false}>
            {lesson.title}
          </Link>
          {at < 0 ? "" : `, job ${at + 1} of ${lesson.cases.length}`}
        </span>
      ) : (
        <span>{query.family === null ? "Any family" : labelOf(vocabulary.instruments, query.family)}</span>
      )}
      {learner ? <span>{learner.name}</span> : null}
      <span className={`${styles.kept} unprinted`}>The address keeps it: you can stop and come back.</span>
    </p>
  );
}
