import controls from "@/app/_components/controls.module.css";

import { StateNote } from "@/app/_components/StateNote";
import type { ShownPlan } from "@/lib/exchange/import/importDraft";
import styles from "./BringIn.module.css";
import { LeftRows } from "./LeftRows";
import { ReadyRows } from "./ReadyRows";
import { RefusedRows } from "./RefusedRows";
import { settledWords } from "./settledWords";

/** The third step: what would come of every row, before anything is written. */
export function TryOut({ plan, isBusy }: Readonly<{ plan: ShownPlan; isBusy: boolean }>) {
  const { readyCount, refusedCount, refused, leftRows } = plan;
  const said = [...settledWords(plan), ...plan.notes];
  return (
    <div className={styles.step}>
      <h3>3. Look at what would come of it</h3>
      {said.length > 0 ? (
        <ul className={styles.said}>
          {said.map((words) => (
            <li key={words}>{words}</li>
          ))}
        </ul>
      ) : null}
      {refusedCount > 0 ? (
        <StateNote
          title={`${refusedCount} ${refusedCount === 1 ? "row" : "rows"} cannot be taken in as they stand`}
          tone="warn"
        >
          <RefusedRows rows={refused} count={refusedCount} />
          <LeftRows text={leftRows} />
        </StateNote>
      ) : null}
      {readyCount > 0 ? <ReadyRows rows={plan.ready} count={readyCount} /> : null}
      <p className={styles.act}>
        {readyCount > 0 ? (
          <button type="submit" name="wish" value="take" className={controls.lead} disabled={isBusy}>
            Take in {readyCount} {readyCount === 1 ? "job" : "jobs"}
          </button>
        ) : (
          "There is nothing to take in yet. Change what the columns are, or the table, and try again."
        )}
      </p>
    </div>
  );
}
