import Link from "next/link";
import { chanceIn100 } from "@/app/_components/chanceIn100";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { RiskMark } from "@/app/_components/RiskMark";
import { Section } from "@/app/_components/Section";
import type { StepView } from "@/app/_components/stepViews";
import type { PathBelief } from "@/lib/consult/record/beliefAlongPath";
import { Dot, Lane } from "./Lane";
import styles from "./Path.module.css";

type Props = Readonly<{
  steps: readonly StepView[];
  belief: PathBelief;
  /** Labels of the causes in the belief, in its order. */
  labels: readonly string[];
  hasRoot: boolean;
}>;

/** The path as a line of checks: what was done and found, and how belief stood after it. */
export function Path({ steps, belief, labels, hasRoot }: Props) {
  const minutes = steps.reduce((sum, step) => sum + step.minutes, 0);
  return (
    <Section
      title="The path"
      aside={`${steps.length} ${steps.length === 1 ? "step" : "steps"}, ${formatMinutes(minutes)}; how likely each cause stood after it, in 100`}
    >
      <ul className={styles.legend}>
        {labels.map((label, place) => (
          <li key={label}>
            <svg width="16" height="16" viewBox="-8 -8 16 16" aria-hidden="true">
              <Dot place={place} />
            </svg>
            {label}
            {hasRoot && place === 0 ? <b>root</b> : null}
          </li>
        ))}
      </ul>
      <p className={styles.scale} aria-hidden="true">
        <span>0</span>
        <span>50</span>
        <span>100</span>
      </p>
      <ol className={styles.path}>
        {steps.map((step, at) => (
          // Two steps of a path can be alike in every word; only their place tells them apart.
          <li
            key={`${at} ${step.title}`}
            data-kind={step.kind}
            data-turn={belief.turn === at ? "" : undefined}
          >
            <div className={styles.lane}>
              <Lane
                from={(at === 0 ? belief.before : belief.after[at - 1]) ?? []}
                to={belief.after[at] ?? []}
              />
            </div>
            <span className={styles.number}>{at + 1}</span>
            <div className={styles.step}>
              <h3>
                {step.href ? (
                  <Link href={step.href} prefetch={false}>
                    {step.title}
                  </Link>
                ) : (
                  step.title
                )}
              </h3>
              <p>
                {step.kind === "check" ? null : <em>{step.kind}</em>} {step.found}
              </p>
              {step.note ? <p className={styles.note}>{step.note}</p> : null}
              {belief.turn === at ? (
                <p className={styles.turned}>It turned here: from now on {labels[0]?.toLowerCase()} led.</p>
              ) : null}
            </div>
            <div className={styles.cost}>
              <span className={styles.minutes}>
                <span className="reading">{step.minutes}</span> min
              </span>
              {step.riskClass === null ? null : <RiskMark riskClass={step.riskClass} />}
              <span className="heard">
                Belief after this step: {sayBelief(labels, belief.after[at] ?? [])}
              </span>
            </div>
          </li>
        ))}
      </ol>
      {steps.length === 0 ? <p className="small soft">No step was written down.</p> : null}
    </Section>
  );
}

const sayBelief = (labels: readonly string[], row: readonly number[]) =>
  `${labels.map((label, place) => `${label.toLowerCase()} ${chanceIn100(row[place] ?? 0)}`).join(", ")} in 100.`;
