import Link from "next/link";
import type { Warning } from "@/lib/consult/answer";
import { HarmRate } from "../_components/HarmRate";
import { RiskMark } from "../_components/RiskMark";
import styles from "./NotYet.module.css";

/** One repair to hold off: its risk and record, what to look at first, and what can hurt the one who does it. */
export function WarningRow({ warning }: Readonly<{ warning: Warning }>) {
  const { repair, label, riskClass, why, checkFirst, done, harmed, cautions } = warning;
  return (
    <article className={styles.warning}>
      <h3>
        <Link href={`/handbook/repairs/${repair}`} prefetch={false}>
          {label}
        </Link>
      </h3>
      <p className={styles.odds}>
        <RiskMark riskClass={riskClass} />
        <HarmRate harmed={harmed} done={done} />
      </p>
      <p className={styles.why}>{why}</p>
      {checkFirst.length > 0 ? (
        <details className={styles.looks}>
          <summary>
            <span>
              <b>First:</b> {checkFirst.map((look) => look.label.toLowerCase()).join("; ")}. <u>Why</u>
            </span>
          </summary>
          <ul>
            {checkFirst.map((look) => (
              <li key={look.check}>
                <Link href={`/handbook/checks/${look.check}`} prefetch={false}>
                  {look.label}
                </Link>
                <span>{look.why}</span>
              </li>
            ))}
          </ul>
        </details>
      ) : null}
      {cautions.length > 0 ? (
        <p className={styles.cautions}>
          <b>Mind yourself:</b>
          {cautions.map(({ id, label: hazard }) => (
            <Link key={id} href={`/handbook/cautions/${id}`} prefetch={false}>
              {hazard.toLowerCase()}
            </Link>
          ))}
        </p>
      ) : null}
    </article>
  );
}
