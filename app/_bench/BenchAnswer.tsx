import type { Answer } from "@/lib/consult/answer";
import controls from "../_components/controls.module.css";
import styles from "./Bench.module.css";
import type { BenchQuery } from "./benchQuery";
import type { CaseTitles } from "./CauseRow";
import { CheckNext } from "./CheckNext";
import { Likely } from "./Likely";
import { NoAnswer } from "./NoAnswer";
import { NotYet } from "./NotYet";
import { PlanPart } from "./PlanPart";
import { TimeSpread } from "./TimeSpread";

type Props = Readonly<{
  answer: Answer;
  bench: BenchQuery;
  titles: CaseTitles;
  /** The finished cases that chances come from. */
  caseCount: number;
}>;

/** The answer beside the evidence: likely, next, the plan where it was asked for, not yet, time. */
export function BenchAnswer({ answer, bench, titles, caseCount }: Props) {
  // With nothing understood, chances would only say what is common: no answer to what was asked.
  const hasAnswer =
    answer.understood.length > 0 &&
    !answer.instrument?.outside &&
    (answer.causes.length > 0 || answer.nextChecks.length > 0);
  return (
    <aside className={styles.answer} aria-label="What it looks like">
      <div className={controls.sheet}>
        {hasAnswer ? (
          <>
            <Likely answer={answer} titles={titles} caseCount={caseCount} />
            <CheckNext answer={answer} />
            <PlanPart plan={answer.plan} bench={bench} />
            <NotYet warnings={answer.warnings} />
            <TimeSpread estimate={answer.estimate} />
          </>
        ) : (
          <>
            <NoAnswer answer={answer} says={bench.says} />
            {answer.plan === undefined ? null : <PlanPart plan={null} bench={bench} />}
          </>
        )}
      </div>
    </aside>
  );
}
