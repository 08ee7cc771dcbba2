import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { LessonMark } from "@/app/_components/LessonMark";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import type { NamedCause } from "@/lib/study/brierScore";
import type { StudyReview } from "@/lib/study/reviewStudy";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { BeliefChart } from "./BeliefChart";
import { BeliefTable } from "./BeliefTable";
import styles from "./Feedback.module.css";
import { PathColumn } from "./PathColumn";
import { otherRows, ownRows } from "./pathRows";
import { reviewWords } from "./reviewWords";

type Props = Readonly<{
  kase: Case;
  review: StudyReview;
  named: readonly NamedCause[];
  proposed: Readonly<{ repair: string | undefined; first: string | undefined }>;
  vocabulary: Vocabulary;
  /** What was found by the checks of the recorded and the bench's way, in words. */
  found: ReadonlyMap<string, string>;
  nextHref: string;
}>;

/** What is told once the answer is given: what it was, how it went, three ways side by side, and how belief moved. */
export function Feedback({ kase, review, named, proposed, vocabulary, found, nextHref }: Props) {
  const { own, recorded, planned, roots } = review;
  const lines = review.lines.map((line) => ({
    ...line,
    label: labelOf(vocabulary.causes, line.cause),
    isRoot: roots.includes(line.cause),
  }));
  const checks = own.checks.map((check) => ({ ...check, label: labelOf(vocabulary.checks, check.check) }));
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
      <p className={`${controls.row} unprinted`}>
        <a className={controls.lead} href={nextHref}>
          Next case
        </a>
        <Link className={controls.plain} href={`/casebook/${kase.id}`} prefetch={false}>
          Read the story
        </Link>
        <a className={controls.plain} href="/study">
          Another family
        </a>
      </p>
      <Section title="How it went">
        <dl className={styles.went}>
          {reviewWords(review, named, proposed, vocabulary).map(({ term, words, tone }) => (
            <div key={term} data-tone={tone}>
              <dt>{term}</dt>
              <dd>{words}</dd>
            </div>
          ))}
        </dl>
      </Section>
      <Section
        title="Your way beside the one on record"
        aside="minutes as the handbook reckons them, up to the repair that cured it or did harm"
      >
        <div className={styles.paths}>
          <PathColumn
            title="You"
            minutes={own.score.minutes}
            rows={ownRows(review, vocabulary)}
            empty="You asked for no check."
          />
          <PathColumn
            title="On record"
            minutes={recorded.score.minutes}
            rows={otherRows(recorded.checks, review, vocabulary, found)}
            empty="No check was written down."
          />
          <PathColumn
            title="As the bench would have gone"
            minutes={planned.score.minutes}
            rows={otherRows(planned.checks, review, vocabulary, found)}
            empty="The bench would have asked for none."
          />
        </div>
      </Section>
      <Section
        title="What your checks told"
        aside="how likely each cause stood after each, in 100, by handbook and the other cases"
      >
        <BeliefChart lines={lines} checks={checks.length} />
        <BeliefTable lines={lines} checks={checks} best={own.score.best} />
        <p className="small soft">
          A bit is what an even yes or no tells. The dotted line stands at 80 in 100: beyond it the evidence
          has spoken. Belief starts from how common each cause is; the complaint itself is not counted.
        </p>
      </Section>
    </>
  );
}
