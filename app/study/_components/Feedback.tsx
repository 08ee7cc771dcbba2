import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { LessonMark } from "@/app/_components/LessonMark";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import { StateNote } from "@/app/_components/StateNote";
import type { Case } from "@/lib/casebook/caseFile";
import type { Learner } from "@/lib/casebook/learners/learnerFile";
import { jobsOf, type StudiedJob } from "@/lib/study/memory/jobsOf";
import type { StudyAnswer, StudyReview } from "@/lib/study/review/reviewStudy";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { BeliefChart } from "./BeliefChart";
import { BeliefTable } from "./BeliefTable";
import styles from "./Feedback.module.css";
import { Kept } from "./Kept";
import type { NextStop } from "./nextStop";
import { reviewWords } from "./reviewWords";
import { Ways } from "./Ways";
import { wayRows } from "./wayRows";

type Props = Readonly<{
  kase: Case;
  review: StudyReview;
  answer: StudyAnswer;
  vocabulary: Vocabulary;
  /** What was found by the checks of the recorded and the bench's way, in words. */
  found: ReadonlyMap<string, string>;
  next: NextStop;
  learner: Learner | undefined;
  /** Whether the answer could not be written down. */
  unkept: boolean;
}>;

/** What is told once the answer is given: what it was, how it went, three ways side by side, and how belief moved. */
export function Feedback({ kase, review, answer, vocabulary, found, next, learner, unkept }: Props) {
  const { own, recorded, planned, roots } = review;
  const lines = review.lines.map((line) => ({
    ...line,
    label: labelOf(vocabulary.causes, line.cause),
    isRoot: roots.includes(line.cause),
  }));
  const checks = own.checks.map((check) => ({ ...check, label: labelOf(vocabulary.checks, check.check) }));
  const job = learner && jobsOf(learner).find((one) => one.case === kase.id);
  return (
    <>
      <h1>It was: {roots.map((root) => labelOf(vocabulary.causes, root)).join(", and ")}</h1>
      {kase.lessons.map((lesson) => (
        <LessonMark key={lesson}>{lesson}</LessonMark>
      ))}
      <p className={styles.story}>
        Case {kase.id}: {kase.title}
        {kase.minutes === undefined ? "" : `. The whole job took ${formatMinutes(kase.minutes)}.`}
      </p>
      {learner && job && !unkept ? (
        <Kept name={learner.name} job={job} isThis={isSame(job, review, answer)} />
      ) : null}
      {unkept ? (
        <StateNote title="This answer was not kept" tone="fail" level={2}>
          <p>
            Your file could not be written to: the disk may be full, or the file damaged. Once that is mended,
            go back and answer again; <Link href="/study/learners">all learners</Link> says what is wrong with
            a file.
          </p>
        </StateNote>
      ) : null}
      <p className={`${controls.row} ${styles.on} unprinted`}>
        <a className={controls.lead} href={next.href}>
          {next.label}
        </a>
        <Link className={controls.plain} href={`/casebook/${kase.id}`} prefetch={false}>
          Read the story
        </Link>
        <a className={controls.plain} href="/study">
          Back to Study
        </a>
      </p>
      <Section title="How it went">
        <dl className={styles.went}>
          {reviewWords(review, answer, vocabulary).map(({ term, words, tone }) => (
            <div key={term} data-tone={tone}>
              <dt>{term}</dt>
              <dd>{words}</dd>
            </div>
          ))}
        </dl>
      </Section>
      <Section
        title="Three ways through it"
        aside="which check came when; minutes as the handbook reckons them, up to the repair that cured it or did harm"
      >
        <Ways
          rows={wayRows(review, vocabulary, found)}
          minutes={{
            you: own.score.minutes,
            record: recorded.score.minutes,
            bench: planned.score.minutes,
          }}
        />
      </Section>
      <Section
        title="What your checks told"
        aside="how likely each cause stood after each, in 100, by handbook and the other cases"
      >
        <BeliefChart lines={lines} checks={checks.length} />
        <BeliefTable lines={lines} checks={checks} best={own.score.best} />
      </Section>
    </>
  );
}

/** Whether the last session with a job was given this very answer. */
function isSame({ sessions }: StudiedJob, review: StudyReview, { named }: StudyAnswer): boolean {
  const last = sessions.at(-1);
  return (
    last !== undefined &&
    last.checks === review.own.checks.length &&
    Math.abs(last.score - review.brier) < sameScore &&
    last.said.map(({ cause }) => cause).join() === named.map(({ cause }) => cause).join()
  );
}

/** A score is kept with four digits. */
const sameScore = 0.001;
