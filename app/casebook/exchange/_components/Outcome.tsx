import Link from "next/link";

import { StateNote } from "@/app/_components/StateNote";
import type { ShownPlan } from "@/lib/exchange/import/importDraft";
import type { TakenRow } from "@/lib/exchange/rows/takenRow";
import styles from "./BringIn.module.css";
import { LeftRows } from "./LeftRows";
import { RefusedRows } from "./RefusedRows";

type Props = Readonly<{ taken: readonly TakenRow[]; plan: ShownPlan; cutShort: string }>;

const shownLinks = 12;
const shownFailed = 100;

/** The last step: what is in, and every row that is not. */
export function Outcome({ taken, plan, cutShort }: Props) {
  const isIn = taken.filter(({ id }) => id !== undefined);
  const failed = taken.filter(({ id }) => id === undefined);
  const left = plan.refusedCount + failed.length;
  return (
    <div className={styles.step}>
      <h3>4. Taken in</h3>
      <StateNote
        title={`${isIn.length} ${isIn.length === 1 ? "job is" : "jobs are"} in the casebook`}
        tone={cutShort ? "warn" : "plain"}
      >
        {cutShort ? <p>{cutShort}</p> : null}
        <ul className={styles.links}>
          {isIn.slice(0, shownLinks).map(({ id, line }) => (
            <li key={line}>
              <Link href={`/casebook/${id}`} prefetch={false}>
                {id}
              </Link>
            </li>
          ))}
        </ul>
        {isIn.length > shownLinks ? (
          <p>
            and {isIn.length - shownLinks} more: <Link href="/casebook">look in the casebook</Link>
          </p>
        ) : null}
      </StateNote>
      {left > 0 ? (
        <StateNote title={`${left} ${left === 1 ? "row is" : "rows are"} not in`} tone="warn">
          <RefusedRows rows={[...failed.slice(0, shownFailed), ...plan.refused]} count={left} />
          {plan.refusedCount > 0 ? <LeftRows text={plan.leftRows} /> : null}
        </StateNote>
      ) : null}
    </div>
  );
}
