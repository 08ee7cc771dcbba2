import type { Warning } from "@/lib/consult/answer";
import styles from "./NotYet.module.css";

/** How often a repair went wrong in jobs like the one in view, how sure that is, and in all jobs where there are more. */
export function Odds({ warning }: Readonly<{ warning: Warning }>) {
  const { likeJobs, odds, done, harmed } = warning;
  return (
    <p className={styles.rate}>
      <b>{odds}</b>
      {likeJobs && done > likeJobs.done ? `; ${harmed} of ${done} in all jobs` : null}.
    </p>
  );
}
