import Link from "next/link";
import type { Answer, NextCheck } from "@/lib/consult/answer";
import controls from "../_components/controls.module.css";
import { More } from "../_components/More";
import { RiskMark } from "../_components/RiskMark";
import { Section } from "../_components/Section";
import styles from "./CheckNext.module.css";
import { doubtBits, settling } from "./settling";

/** As many as stay in sight beside the evidence. */
const shownFirst = 3;

/** What to look at next: most told for least time and risk. */
export function CheckNext({ answer }: Readonly<{ answer: Answer }>) {
  const doubt = doubtBits(answer);
  const rows = answer.nextChecks.map((check) => <CheckRow key={check.id} check={check} doubt={doubt} />);
  return (
    <Section title="Check next" id="next" aside="most told for least time and risk">
      <ol className={styles.checks}>
        {rows.slice(0, shownFirst)}
        {rows.length === 0 ? (
          <li className="small soft">Nothing that is left to check would tell more.</li>
        ) : null}
      </ol>
      <More count={rows.length - shownFirst} of="check">
        <ol start={shownFirst + 1}>{rows.slice(shownFirst)}</ol>
      </More>
    </Section>
  );
}

function CheckRow({ check, doubt }: Readonly<{ check: NextCheck; doubt: number }>) {
  const { share, words } = settling(check.gainBits, doubt);
  return (
    <li className={styles.check}>
      <span className={styles.minutes}>
        <span className="reading">{Math.round(check.minutes) || "<1"}</span>
        <small>min</small>
      </span>
      <div>
        <h3>
          <Link className={controls.title} href={`/handbook/checks/${check.id}`} prefetch={false}>
            {check.label}
          </Link>
        </h3>
        <p className={styles.question}>{check.question}</p>
        <p className={styles.tells}>
          <RiskMark riskClass={check.riskClass} />
          <span className={styles.settle}>
            <svg width="62" height="12" aria-hidden="true">
              <rect className={styles.frame} x="0.5" y="0.5" width="61" height="11" />
              <rect className={styles.fill} x="1" y="1" width={60 * share} height="10" />
            </svg>
            {words}
          </span>
          {check.tells ? <span>{check.tells}</span> : null}
        </p>
      </div>
    </li>
  );
}
