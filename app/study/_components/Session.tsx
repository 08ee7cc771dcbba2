import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import type { Learner } from "@/lib/casebook/learners/learnerFile";
import type { Lesson } from "@/lib/casebook/lessons/lessonFile";
import type { Bench } from "@/lib/consult/bench/bench";
import type { LengthWords } from "@/lib/gauging/lengths/lengthWords";
import { settleStudy } from "@/lib/study/answer/settleStudy";
import { legalAsks } from "@/lib/study/asking/legalAsks";
import { openForStudy } from "@/lib/study/asking/openForStudy";
import { studyEvidence } from "@/lib/study/asking/studyEvidence";
import { pathCost } from "@/lib/study/review/pathCost";
import { reviewStudy } from "@/lib/study/review/reviewStudy";
import { appliesTo } from "@/lib/vocabulary/appliesTo";
import { AnswerForm } from "./AnswerForm";
import { AskList } from "./AskList";
import { type AnswerView, answerViews } from "./answerViews";
import { askGroups } from "./askGroups";
import { CameIn } from "./CameIn";
import { Feedback } from "./Feedback";
import { JobLine } from "./JobLine";
import { Known } from "./Known";
import { nextStop } from "./nextStop";
import styles from "./Session.module.css";
import { Spent } from "./Spent";
import type { StudyQuery } from "./studyQuery";

type Props = Readonly<{
  kase: Case;
  query: StudyQuery;
  bench: Bench;
  learner: Learner | undefined;
  lesson: Lesson | undefined;
  lengths: LengthWords;
}>;

/** A job under way, or once the answer is given what there was to see in it. */
export function Session({ kase, query: sent, bench, learner, lesson, lengths }: Props) {
  const { vocabulary } = bench;
  const query = { ...sent, asked: legalAsks(kase, sent.asked, vocabulary) };
  const serves = ({ families }: Readonly<{ families: readonly string[] }>) =>
    appliesTo(vocabulary, families, kase.instrument);
  const instrument = labelOf(vocabulary.instruments, kase.instrument);
  const settled = query.answered ? settleStudy(kase, query, vocabulary) : undefined;
  const answers = answerViews(kase, query.asked, bench, lengths);
  const job = <JobLine query={query} learner={learner} lesson={lesson} vocabulary={vocabulary} />;
  if (settled?.answer) {
    const { answer } = settled;
    const review = reviewStudy(kase, bench, answer);
    const others = [...review.recorded.checks, ...review.planned.checks].map(({ check }) => check);
    return (
      <>
        {job}
        <Feedback
          kase={kase}
          review={review}
          answer={answer}
          vocabulary={vocabulary}
          found={foundWords(answerViews(kase, [...new Set(others)], bench, lengths))}
          next={nextStop(query, bench, learner, lesson)}
          learner={learner}
          unkept={query.unkept}
        />
        <Section title="The job as it came in">
          <CameIn as="h3" instrument={instrument} complaint={kase.complaint} arrival={kase.arrival} />
        </Section>
        <Known answers={answers} title="What you asked" />
      </>
    );
  }
  const evidence = studyEvidence(kase, query.asked, vocabulary);
  return (
    <>
      {job}
      <CameIn as="h1" instrument={instrument} complaint={kase.complaint} arrival={kase.arrival} />
      <div className={styles.two}>
        <div>
          <Known answers={answers} />
          <AskList
            groups={askGroups(
              openForStudy(vocabulary, kase.instrument, evidence.settled),
              kase.instrument,
              query,
              vocabulary,
            )}
            query={query}
          />
        </div>
        <div className={styles.aside}>
          <Spent cost={pathCost(answers)} />
          <AnswerForm
            query={query}
            causes={[...vocabulary.causes.values()].filter(serves)}
            repairs={[...vocabulary.repairs.values()].filter(serves)}
            checks={[...vocabulary.checks.values()].filter(serves)}
            problems={settled?.problems ?? []}
          />
        </div>
      </div>
    </>
  );
}

const foundWords = (answers: readonly AnswerView[]) =>
  new Map(answers.map(({ id, found }) => [id, found.map(({ words }) => words).join("; ")]));
