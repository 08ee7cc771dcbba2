import Link from "next/link";
import type { PlanStep } from "@/lib/consult/answer";
import { chanceIn100 } from "../_components/chanceIn100";
import { formatMinutes } from "../_components/formatMinutes";
import { RiskMark } from "../_components/RiskMark";
import type { BenchQuery } from "./benchQuery";
import { setFinding } from "./editBench";
import { PlanLeaf } from "./PlanLeaf";
import styles from "./PlanPart.module.css";

type Props = Readonly<{
  step: PlanStep;
  /** The bench as it stands when this step is come to. */
  bench: BenchQuery;
  isFirst?: boolean;
}>;

/** One step of a plan and all that follows it: a check with its outcomes to unfold, or what to do. */
export function PlanStepView({ step, bench, isFirst = false }: Props) {
  if (step.kind !== "check") return <PlanLeaf step={step} bench={bench} />;
  const likeliest = Math.max(...step.outcomes.map(({ probability }) => probability));
  return (
    <div>
      <p className={styles.check}>
        <span className="heard">Check: </span>
        <Link href={`/handbook/checks/${step.check}`} prefetch={false}>
          {step.label}
        </Link>
        <span className={styles.minutes}>{minutesWords(step.minutes)}</span>
        <RiskMark riskClass={step.riskClass} />
      </p>
      {step.opens.length > 0 ? (
        <p className={styles.opens}>
          Before it: {step.opens.map(({ label }) => label.toLowerCase()).join(", ")}. Its time is counted in.
        </p>
      ) : null}
      <ul className={styles.outcomes}>
        {step.outcomes.map(({ outcome, label, probability, next }) => (
          <li key={outcome}>
            <details open={isFirst && probability === likeliest}>
              <summary>
                <span className={styles.outcome}>{label}</span>
                <span className={styles.chance}>{chanceIn100(probability)} in 100</span>
                <span className={styles.then}>{inShort(next)}</span>
              </summary>
              <PlanStepView
                step={next}
                bench={setFinding(bench, { check: step.check, outcome, part: null })}
              />
            </details>
          </li>
        ))}
      </ul>
    </div>
  );
}

const minutesWords = (minutes: number) =>
  minutes > 0 ? formatMinutes(Math.max(1, minutes)) : "no more time";

/** What an outcome leads to, in one line, so that a plan can be read without unfolding it. */
function inShort(next: PlanStep): string {
  const about = `about ${formatMinutes(next.expectedMinutes)} from there`;
  if (next.kind === "check") return `then: ${next.label.toLowerCase()}; ${about}`;
  if (next.kind === "act") return `do: ${next.label.toLowerCase()}; ${about}`;
  return `then plan on; ${about}`;
}
