import type { Answer } from "@/lib/consult/answer";
import controls from "../_components/controls.module.css";
import styles from "./Bench.module.css";
import type { CaseTitles } from "./CauseRow";
import { CheckNext } from "./CheckNext";
import { Likely } from "./Likely";
import { NoAnswer } from "./NoAnswer";
import { NotYet } from "./NotYet";
import { TimeSpread } from "./TimeSpread";

type Props = Readonly<{ answer: Answer; says: string; titles: CaseTitles }>;

/** The answer beside the evidence: likely, next, not yet, time. */
export function BenchAnswer({ answer, says, titles }: Props) {
  // With nothing understood, chances would only say what is common: no answer to what was asked.
  const hasAnswer =
    answer.understood.length > 0 &&
    !answer.instrument?.outside &&
    (answer.causes.length > 0 || answer.nextChecks.length > 0);
  return (
    <aside className={`${styles.answer} ${controls.sheet}`} aria-label="What it looks like">
      {hasAnswer ? (
        <>
          <Likely answer={answer} titles={titles} caseCount={titles.size} />
          <CheckNext answer={answer} />
          <NotYet warnings={answer.warnings} />
          <TimeSpread estimate={answer.estimate} />
        </>
      ) : (
        <NoAnswer answer={answer} says={says} />
      )}
    </aside>
  );
}
