import { formatMinutes } from "@/app/_components/formatMinutes";
import { RiskMark } from "@/app/_components/RiskMark";
import styles from "./Ways.module.css";
import type { WayRow } from "./wayRows";

type Props = Readonly<{
  rows: readonly WayRow[];
  minutes: Readonly<{ you: number; record: number; bench: number }>;
}>;

/** Three ways through the checks in one table: a row a check, and in each column when it was made. */
export function Ways({ rows, minutes }: Props) {
  return (
    <table className={styles.ways}>
      <thead>
        <tr>
          <th scope="col">Check</th>
          <th scope="col">You</th>
          <th scope="col">
            <span className="heard">On </span>Record
          </th>
          <th scope="col">
            <span className="heard">As the </span>Bench
            <span className="heard"> would have gone</span>
          </th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ check, label, minutes: own, riskClass, you, record, bench, notes }) => (
          <tr key={check} data-missed={you === null ? "" : undefined}>
            <th scope="row">
              {label}
              <span className={styles.cost}>
                {formatMinutes(own)} <RiskMark riskClass={riskClass} />
              </span>
              {notes.map(({ words, tone }) => (
                <small key={words} data-tone={tone}>
                  {words}
                </small>
              ))}
            </th>
            <Place at={you} />
            <Place at={record} />
            <Place at={bench} />
          </tr>
        ))}
      </tbody>
      <tfoot>
        <tr>
          <th scope="row">Minutes in all</th>
          <td>{formatMinutes(minutes.you)}</td>
          <td>{formatMinutes(minutes.record)}</td>
          <td>{formatMinutes(minutes.bench)}</td>
        </tr>
      </tfoot>
    </table>
  );
}

const Place = ({ at }: Readonly<{ at: number | null }>) => (
  <td>
    {at === null ? (
      <>
        <span aria-hidden="true" className={styles.without}>
          –
        </span>
        <span className="heard">without it</span>
      </>
    ) : (
      <span className={styles.place}>{at}</span>
    )}
  </td>
);
