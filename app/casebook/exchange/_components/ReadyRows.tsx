import { formatDay } from "@/app/_components/formatDay";
import type { ShownPlan } from "@/lib/exchange/import/importDraft";
import styles from "./ReadyRows.module.css";

type Props = Readonly<{ rows: ShownPlan["ready"]; count: number }>;

/** The rows that can be taken in, as the cases that they would be. */
export function ReadyRows({ rows, count }: Props) {
  return (
    <table className={styles.rows}>
      <caption>
        {count} {count === 1 ? "row" : "rows"} can be taken in
        {count > rows.length ? `; the first ${rows.length} are shown` : ""}
      </caption>
      <thead>
        <tr>
          <th scope="col">Line</th>
          <th scope="col">Job</th>
          <th scope="col">Title</th>
          <th scope="col">Instrument</th>
          <th scope="col">Taken in</th>
          <th scope="col">Becomes</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ line, id, title, instrument, received, status, remarks }) => (
          <tr key={line}>
            <td>{line}</td>
            <td>{id}</td>
            <td>
              {title}
              {remarks.map((remark) => (
                <small key={remark}>{remark}</small>
              ))}
            </td>
            <td>{instrument.replaceAll("-", " ")}</td>
            <td>{formatDay(received)}</td>
            <td>{status === "open" ? "an open sheet" : "a finished case"}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
