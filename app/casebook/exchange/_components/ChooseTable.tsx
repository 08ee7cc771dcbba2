import controls from "@/app/_components/controls.module.css";

import type { ImportDraft } from "@/lib/exchange/import/importDraft";
import styles from "./BringIn.module.css";
import { Folded } from "./Folded";

const separatorWords = { ",": "commas", ";": "semicolons", "\t": "tabs", "|": "bars" } as const;

/** The first step: a file, or a table that is pasted. */
export function ChooseTable({ draft: { source, rowCount, separator } }: Readonly<{ draft: ImportDraft }>) {
  return (
    <div className={styles.step}>
      <h3>1. Choose the table</h3>
      <div className={styles.choose}>
        <div>
          <label htmlFor="file">A CSV file, with a row of headings</label>
          <input
            id="file"
            name="file"
            type="file"
            accept=".csv,.tsv,.txt,text/csv,text/plain"
            className={controls.field}
          />
        </div>
        <button type="submit" name="wish" value="read" className={source ? controls.plain : controls.lead}>
          Read it
        </button>
      </div>
      <Folded label="Or paste the table">
        <label htmlFor="pasted">The rows, the headings first, as copied from a spreadsheet</label>
        <textarea id="pasted" name="pasted" rows={4} className={controls.field} />
      </Folded>
      {source ? (
        <p className={styles.read}>
          <b>{source.name}</b>: {rowCount} {rowCount === 1 ? "row" : "rows"}, parted by{" "}
          {separatorWords[separator]}.
          {source.encoding === "Latin-1"
            ? " Its bytes are not UTF-8 and were read as Latin-1: look whether the accents are right."
            : ""}
        </p>
      ) : null}
    </div>
  );
}
