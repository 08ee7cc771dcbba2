import type { Answer } from "@/lib/consult/answer";
import { chanceIn100 } from "../_components/chanceIn100";
import { riskWord } from "../_components/riskWord";
import styles from "./Strip.module.css";

/** The answer in short, kept in sight at the foot of a narrow page. */
export function Strip({ answer }: Readonly<{ answer: Answer }>) {
  const cause = answer.causes[0];
  const next = answer.nextChecks[0];
  const warning = answer.warnings[0];
  if (!cause && !next) return null;
  return (
    <nav className={`${styles.strip} unprinted`} aria-label="The answer in short">
      {warning ? (
        <a className={styles.warn} href="#not-yet">
          <span>
            <b>Not yet:</b> {warning.label}
          </span>
        </a>
      ) : null}
      {cause ? (
        <a href="#likely">
          Likely, {chanceIn100(cause.probability)} in 100 <b>{cause.label}</b>
        </a>
      ) : null}
      {next ? (
        <a href="#next">
          Next, {Math.round(next.minutes)} min, {riskWord(next.riskClass).toLowerCase()} <b>{next.label}</b>
        </a>
      ) : null}
    </nav>
  );
}
