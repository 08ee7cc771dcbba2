import { randomInt } from "node:crypto";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import type { Case } from "@/lib/casebook/caseFile";
import type { Bench } from "@/lib/consult/bench";
import { legalAsks } from "@/lib/study/legalAsks";
import { openForStudy } from "@/lib/study/openForStudy";
import { pathCost } from "@/lib/study/pathCost";
import { reviewStudy } from "@/lib/study/reviewStudy";
import { settleAnswer } from "@/lib/study/settleAnswer";
import { studyEvidence } from "@/lib/study/studyEvidence";
import { appliesTo } from "@/lib/vocabulary/appliesTo";
import { AnswerForm } from "./AnswerForm";
import { AskList } from "./AskList";
import { type AnswerView, answerViews } from "./answerViews";
import { askGroups } from "./askGroups";
import { CameIn } from "./CameIn";
import { Feedback } from "./Feedback";
import { Known } from "./Known";
import styles from "./Session.module.css";
import { Spent } from "./Spent";
import { nextCaseHref, type StudyQuery, seeds } from "./studyQuery";

type Props = Readonly<{ kase: Case; query: StudyQuery; bench: Bench }>;

/** A job under way, or once the answer is given what there was to see in it. */
export function Session({ kase, query: sent, bench }: Props) {
  const { vocabulary } = bench;
  const query = { ...sent, asked: legalAsks(kase, sent.asked, vocabulary) };
  const serves = ({ families }: Readonly<{ families: readonly string[] }>) =>
    appliesTo(vocabulary, families, kase.instrument);
  const causes = [...vocabulary.causes.values()].filter(serves);
  const instrument = labelOf(vocabulary.instruments, kase.instrument);
  const settled = query.answered
    ? settleAnswer(query.rows, (id) => causes.some((cause) => cause.id === id))
    : undefined;
  const answers = answerViews(kase, query.asked, bench);
  const job = (
    <p className={styles.job}>
      <b>Study</b>
      <span>{query.family === null ? "Any family" : labelOf(vocabulary.instruments, query.family)}</span>
      <span className={styles.kept}>The address keeps it: you can stop and come back.</span>
    </p>
  );
  if (settled?.named) {
    const { repair, first } = query;
    const proposed = {
      repair: repair !== null && vocabulary.repairs.has(repair) ? repair : undefined,
      first: first !== null && vocabulary.checks.has(first) ? first : undefined,
    };
    const review = reviewStudy(kase, bench, { asked: query.asked, named: settled.named, ...proposed });
    const others = [...review.recorded.checks, ...review.planned.checks].map(({ check }) => check);
    return (
      <>
        {job}
        <Feedback
          kase={kase}
          review={review}
          named={settled.named}
          proposed={proposed}
          vocabulary={vocabulary}
          found={foundWords(answerViews(kase, [...new Set(others)], bench))}
          nextHref={nextCaseHref(query, randomInt(seeds))}
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
        <div className={styles.work}>
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
            causes={causes}
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
