import { formatMinutes } from "@/app/_components/formatMinutes";
import { RiskMark } from "@/app/_components/RiskMark";
import styles from "./PathColumn.module.css";
import type { PathRow } from "./pathRows";

type Props = Readonly<{ title: string; minutes: number; rows: readonly PathRow[]; empty: string }>;

/** One way through the checks, each with how it stands to the others. */
export function PathColumn({ title, minutes, rows, empty }: Props) {
  return (
    <div className={styles.column}>
      <h3>
        {title} <span className="soft">{formatMinutes(minutes)}</span>
      </h3>
      {rows.length === 0 ? <p className="soft">{empty}</p> : null}
      <ol>
        {rows.map(({ check, label, minutes: own, riskClass, standing, tone, note }) => (
          <li key={check}>
            <span className={styles.standing} data-tone={tone}>
              {standing}
            </span>
            <div>
              <b>{label}</b>
              {note ? <small>{note}</small> : null}
            </div>
            <span className={styles.cost}>
              <span>{formatMinutes(own)}</span>
              <RiskMark riskClass={riskClass} />
            </span>
          </li>
        ))}
      </ol>
    </div>
  );
}
