import type { ReactNode } from "react";
import styles from "./LearnerTables.module.css";
import { WentBar } from "./WentBar";

/** One kind of job and how those of it stand. */
export type ProgressRow = Readonly<{
  key: string;
  label: ReactNode;
  jobs: number;
  missed: number;
  nearly: number;
  got: number;
  due: number;
}>;

/** Jobs by kind, each job counted as it went last; what is most in need stands first. */
export function ProgressTable({ kind, rows }: Readonly<{ kind: string; rows: readonly ProgressRow[] }>) {
  return (
    <table className={styles.table}>
      <thead>
        <tr>
          <th scope="col">{kind}</th>
          <th scope="col">Jobs</th>
          <th scope="col">How they went last</th>
          <th scope="col">To see again</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ key, label, jobs, missed, nearly, got, due }) => (
          <tr key={key}>
            <th scope="row">{label}</th>
            <td data-term="Jobs">{jobs}</td>
            <td>
              <WentBar missed={missed} nearly={nearly} got={got} />
            </td>
            <td data-term="To see again">{due === 0 ? "none" : due}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
