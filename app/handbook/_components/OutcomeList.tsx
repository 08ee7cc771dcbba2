import Link from "next/link";
import type { OutcomeTells, ToldCause } from "@/lib/consult/outcomeTells";
import type { Check } from "@/lib/vocabulary/check";
import styles from "./OutcomeList.module.css";

type Props = Readonly<{ check: Check; told: readonly OutcomeTells[] }>;

/** What a check can find, and which causes each finding speaks for and against. */
export function OutcomeList({ check, told }: Props) {
  return (
    <ul>
      {told.map((tells) => (
        <li key={tells.outcome} className={styles.outcome}>
          <h3>
            {check.outcomes.find(({ id }) => id === tells.outcome)?.label ?? tells.outcome}
            {tells.outcome === check.normal ? <span className={styles.normal}>as it should be</span> : null}
          </h3>
          <Causes side="for" words="+ speaks for" causes={tells.for} />
          <Causes side="against" words={"\u2212 speaks against"} causes={tells.against} />
          {tells.for.length + tells.against.length === 0 ? (
            <p className="small soft">Says little about any one cause.</p>
          ) : null}
        </li>
      ))}
    </ul>
  );
}

type CausesProps = Readonly<{ side: "for" | "against"; words: string; causes: readonly ToldCause[] }>;

function Causes({ side, words, causes }: CausesProps) {
  if (causes.length === 0) return null;
  return (
    <div className={styles.side} data-side={side}>
      <span>{words}</span>
      <ul>
        {causes.map(({ id, label, often }) => (
          <li key={id}>
            <Link href={`/handbook/causes/${id}`} prefetch={false}>
              {label}
            </Link>
            <small>{often}</small>
          </li>
        ))}
      </ul>
    </div>
  );
}
