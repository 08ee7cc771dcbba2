import { formatMinutes } from "@/app/_components/formatMinutes";
import { Jaws } from "@/app/_components/Jaws";
import { RiskMark } from "@/app/_components/RiskMark";
import { Section } from "@/app/_components/Section";
import type { PathCost } from "@/lib/study/review/pathCost";
import styles from "./Spent.module.css";

/** The track grows by half hours, so that the first few minutes are seen. */
const trackMinutes = 30;

/** Minutes and risk as they run. */
export function Spent({ cost }: Readonly<{ cost: PathCost }>) {
  const { minutes, riskMinutes, byRisk } = cost;
  const of = trackMinutes * Math.max(1, Math.ceil(minutes / trackMinutes));
  const taken = byRisk.map((count, risk) => ({ count, risk })).filter(({ count }) => count > 0);
  return (
    <Section title="Spent so far">
      <div className={styles.minutes}>
        <span>Minutes</span>
        <Jaws value={minutes} of={of} />
        <span className={styles.reading}>
          <span className="reading">{formatMinutes(minutes)}</span>
        </span>
      </div>
      <div className={styles.risk}>
        <span className="soft">Risk taken</span>
        {taken.length === 0 ? <span>none yet</span> : null}
        {taken.map(({ count, risk }) => (
          <span key={risk} className={styles.times}>
            <RiskMark riskClass={risk} /> {count === 1 ? "once" : count === 2 ? "twice" : `${count} times`}
          </span>
        ))}
      </div>
      {riskMinutes > 0 ? (
        <p className="small soft">
          What could go wrong is reckoned as {riskMinutes < 1 ? "under a minute" : formatMinutes(riskMinutes)}{" "}
          more.
        </p>
      ) : null}
    </Section>
  );
}
