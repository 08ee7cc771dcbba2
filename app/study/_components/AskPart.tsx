import { formatMinutes } from "@/app/_components/formatMinutes";
import { RiskMark } from "@/app/_components/RiskMark";
import { riskWord } from "@/app/_components/riskWord";
import styles from "./AskList.module.css";
import type { AskGroup, AskView } from "./askGroups";
import { carryAnswer } from "./carryAnswer";

const riskClasses = [0, 1, 2, 3, 4];

/** The checks of one part behind a line that says how many there are of each kind; inside, the safest first. */
export function AskPart({ group, isOpen }: Readonly<{ group: AskGroup; isOpen: boolean }>) {
  const byRisk = riskClasses
    .map((risk) => ({ risk, checks: group.checks.filter(({ riskClass }) => riskClass === risk) }))
    .filter(({ checks }) => checks.length > 0);
  return (
    <details className={styles.part} open={isOpen}>
      <summary>
        <b className={styles.partName}>{group.label}</b>
        <span className={styles.kinds}>
          {byRisk.map(({ risk, checks }) => `${checks.length} ${riskWord(risk).toLowerCase()}`).join(", ")}
        </span>
      </summary>
      {byRisk.map(({ risk, checks }) => (
        <div key={risk} className={styles.kind}>
          <h3>
            <RiskMark riskClass={risk} />
          </h3>
          <ul>
            {checks.map((check) => (
              <li key={check.id}>
                {check.first === "" ? (
                  <a className={styles.check} href={check.href} onClick={carryAnswer}>
                    <CheckWords check={check} />
                  </a>
                ) : (
                  <div className={styles.check} data-shut="">
                    <CheckWords check={check} />
                    <p className={styles.first}>First: {check.first}</p>
                  </div>
                )}
              </li>
            ))}
          </ul>
        </div>
      ))}
    </details>
  );
}

function CheckWords({ check: { label, question, minutes } }: Readonly<{ check: AskView }>) {
  return (
    <>
      <span className={styles.minutes}>{minutes < 1 ? "<1 min" : formatMinutes(minutes)}</span>
      <span className={styles.words}>
        <b>{label}</b>
        <small>{question}</small>
      </span>
    </>
  );
}
