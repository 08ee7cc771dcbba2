import type { PlanAhead } from "@/lib/consult/answer";
import controls from "../_components/controls.module.css";
import { formatMinutes } from "../_components/formatMinutes";
import { Section } from "../_components/Section";
import { StateNote } from "../_components/StateNote";
import { BenchLink } from "./BenchLink";
import type { BenchQuery } from "./benchQuery";
import styles from "./PlanPart.module.css";
import { PlanStepView } from "./PlanStepView";

type Props = Readonly<{
  /** Undefined while it was not asked for, null where none can be made. */
  plan: PlanAhead | null | undefined;
  bench: BenchQuery;
}>;

/** The whole plan, worked out only when asked for: each check with what to do after each outcome, down to the repair. */
export function PlanPart({ plan, bench }: Props) {
  if (plan === undefined)
    return (
      <p className={`${styles.ask} unprinted`}>
        <BenchLink to={bench} plan className={`${controls.opens} ${styles.open}`}>
          Draw the whole plan
        </BenchLink>
        <span>each check, each outcome, and what to do then</span>
      </p>
    );
  return (
    <Section title="The whole plan" id="plan" aside={<Fold bench={bench} />}>
      {plan === null ? (
        <StateNote title="No plan can be made of this yet" tone="warn">
          <p>
            A plan weighs checks against causes, and nothing here bears on a cause. Say what it does, or tap
            it.
          </p>
        </StateNote>
      ) : (
        <>
          <HowGood plan={plan} />
          <PlanStepView step={plan.next} bench={bench} isFirst />
        </>
      )}
    </Section>
  );
}

const Fold = ({ bench }: Pick<Props, "bench">) => (
  <BenchLink to={bench} className={`${controls.opens} unprinted`}>
    Fold it away
  </BenchLink>
);

/** What the plan costs on average, what no plan can undercut, and what acting at once would cost. */
function HowGood({ plan }: Readonly<{ plan: PlanAhead }>) {
  const { expectedMinutes, boundMinutes, knownMinutes, exact, actNow, next } = plan;
  const knowing = Math.max(0, expectedMinutes - knownMinutes);
  return (
    <div className={styles.sums}>
      <p>
        <b>About {formatMinutes(expectedMinutes)}</b> on average until it is mended, {formatMinutes(knowing)}{" "}
        of it to find out what it is. Harm counts as the minutes that it costs.
      </p>
      <p>
        {exact
          ? "No other order of these checks would be quicker on average."
          : `There may be a quicker plan: not every way was gone through. None could take less than ${formatMinutes(boundMinutes)} on average.`}
      </p>
      {next.kind === "act" ? (
        <p>Nothing that is left to check is worth its time: act.</p>
      ) : (
        <p>
          {actNow.repair === null ? "Going through the whole instrument" : `“${actNow.label}”`} at once would
          take {formatMinutes(actNow.expectedMinutes)} on average.
        </p>
      )}
    </div>
  );
}
