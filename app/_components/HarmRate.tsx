import styles from "./HarmRate.module.css";
import { Tally } from "./Tally";

/** How often a repair did harm in the casebook, in words and cells. */
export function HarmRate({ harmed, done }: Readonly<{ harmed: number; done: number }>) {
  if (done === 0) return <span className={styles.rate}>Not done in any case yet</span>;
  const words =
    harmed === 0
      ? `no harm in ${done} ${done === 1 ? "case" : "cases"}`
      : `went wrong ${harmed} of ${done} times`;
  return (
    <span className={styles.rate}>
      <b>{words}</b>
      <Tally k={harmed} n={done} />
    </span>
  );
}
