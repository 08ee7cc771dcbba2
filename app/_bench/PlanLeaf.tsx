import Link from "next/link";
import type { PlanStep } from "@/lib/consult/answer";
import { chanceIn100 } from "../_components/chanceIn100";
import controls from "../_components/controls.module.css";
import { formatMinutes } from "../_components/formatMinutes";
import { RiskMark } from "../_components/RiskMark";
import { BenchLink } from "./BenchLink";
import type { BenchQuery } from "./benchQuery";
import styles from "./PlanPart.module.css";

type Props = Readonly<{ step: Exclude<PlanStep, { kind: "check" }>; bench: BenchQuery }>;

/** The end of one way through the plan: what to do there, what it is likeliest to be, and the minutes from there on. */
export function PlanLeaf({ step, bench }: Props) {
  const { likeliest, expectedMinutes } = step;
  return (
    <div className={step.kind === "act" ? `${styles.leaf} ${styles.does}` : styles.leaf}>
      {step.kind === "act" ? (
        <p className={styles.act}>
          <span>Do:</span>{" "}
          {step.repair === null ? (
            <b>go through the instrument until it is found</b>
          ) : (
            <Link href={`/handbook/repairs/${step.repair}`} prefetch={false}>
              {step.label}
            </Link>
          )}
          {step.riskClass === null ? null : <RiskMark riskClass={step.riskClass} />}
        </p>
      ) : null}
      <p>
        {step.kind === "act" && step.repair !== null
          ? `Mends it ${chanceIn100(step.chance)} times in 100. `
          : null}
        Likeliest then: {likeliest.cause === null ? "something else" : likeliest.label.toLowerCase()},{" "}
        {chanceIn100(likeliest.probability)} in 100. Expect {formatMinutes(expectedMinutes)} from there.
      </p>
      {step.kind === "later" ? (
        <p className="unprinted">
          <BenchLink to={bench} plan className={controls.opens}>
            Found so: plan on from here
          </BenchLink>
        </p>
      ) : null}
    </div>
  );
}
