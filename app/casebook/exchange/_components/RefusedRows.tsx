import type { RowFault } from "@/lib/exchange/import/importPlan";
import styles from "./BringIn.module.css";

type Props = Readonly<{
  rows: readonly Readonly<{ line: number; faults: readonly RowFault[] }>[];
  count: number;
}>;

/** Rows that are not taken in, each with all that is wrong with it. */
export function RefusedRows({ rows, count }: Props) {
  return (
    <>
      <ul className={styles.refused}>
        {rows.map(({ line, faults }) => (
          <li key={line}>
            <b>Line {line}</b>
            <ul>
              {faults.map(({ column, received, expected }) => (
                <li key={`${column} ${received} ${expected}`}>
                  {column ? `${column}: f` : "F"}ound {received}; write {expected}
                </li>
              ))}
            </ul>
          </li>
        ))}
      </ul>
      {count > rows.length ? <p>The first {rows.length} are shown.</p> : null}
    </>
  );
}
