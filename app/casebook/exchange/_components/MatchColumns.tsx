import controls from "@/app/_components/controls.module.css";
import type { ImportDraft } from "@/lib/exchange/import/importDraft";
import { importFields } from "@/lib/exchange/import/importField";
import styles from "./BringIn.module.css";
import { HowWritten } from "./HowWritten";

/** The second step: what each column is taken as, guessed from its heading, and how its dates and numbers are written. */
export function MatchColumns({ draft: { columns, choices } }: Readonly<{ draft: ImportDraft }>) {
  return (
    <div className={styles.step}>
      <h3>2. Say what the columns are</h3>
      <ul className={styles.columns}>
        {columns.map(({ heading, sample, field }, at) => (
          <li key={`column ${at}`} data-out={field ? undefined : ""}>
            <label htmlFor={`column-${at}`}>{heading}</label>
            <p className={styles.sample}>{sample || "nothing in it"}</p>
            <select
              id={`column-${at}`}
              name={`column.${at}`}
              defaultValue={field ?? ""}
              className={controls.field}
            >
              <option value="">Left out</option>
              {importFields.map(({ id, label }) => (
                <option key={id} value={id}>
                  {label}
                </option>
              ))}
            </select>
          </li>
        ))}
      </ul>
      <HowWritten choices={choices} />
    </div>
  );
}
