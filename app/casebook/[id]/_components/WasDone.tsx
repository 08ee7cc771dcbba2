import { formatMinutes } from "@/app/_components/formatMinutes";
import { Section } from "@/app/_components/Section";
import type { StepView } from "@/app/_components/stepViews";
import { lowerFirst } from "@/lib/text/lowerFirst";
import styles from "./WasDone.module.css";

/** The repairs of the case, and what proved that it works. */
export function WasDone({ steps }: Readonly<{ steps: readonly StepView[] }>) {
  const repairs = steps.filter(({ kind }) => kind === "repair");
  const proofs = steps.filter(({ kind }) => kind === "proof");
  return (
    <Section title="What was done">
      {repairs.length === 0 ? <p className="small soft">No repair.</p> : null}
      <ul className={styles.done}>
        {repairs.map(({ title, minutes, found }, at) => (
          <li key={`${at} ${title}`} data-harm={found === "did harm" ? "" : undefined}>
            <span>{title}</span>
            <span>
              {formatMinutes(minutes)}, {found}
            </span>
          </li>
        ))}
      </ul>
      {proofs.length > 0 ? (
        <div className={styles.proof}>
          <b>Proved by</b>
          <ul>
            {proofs.map(({ title, found }, at) => (
              <li key={`${at} ${title}`}>
                {title}: {lowerFirst(found)}
              </li>
            ))}
          </ul>
        </div>
      ) : null}
    </Section>
  );
}
