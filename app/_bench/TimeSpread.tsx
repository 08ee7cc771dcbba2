import type { Answer } from "@/lib/consult/answer";
import { formatMinutes } from "../_components/formatMinutes";
import { Jaws } from "../_components/Jaws";
import { Section } from "../_components/Section";
import styles from "./TimeSpread.module.css";

/** Fewer like jobs than this are not a spread to quote from. */
const fewCases = 5;

/** How long like jobs took: half, four in five, all but one in twenty. */
export function TimeSpread({ estimate }: Pick<Answer, "estimate">) {
  const jobs = estimate?.cases ?? 0;
  const rows = estimate
    ? [
        { words: "half done in", minutes: estimate.minutes.p50 },
        { words: "four in five in", minutes: estimate.minutes.p80 },
        { words: "19 in 20 in", minutes: estimate.minutes.p95 },
      ]
    : [];
  return (
    <Section title="Time" id="time" aside={jobs === 1 ? "1 like job" : `${jobs} like jobs`}>
      {rows.length === 0 ? <p className="small soft">No like job to go by yet.</p> : null}
      <dl className={styles.spread}>
        {rows.map(({ words, minutes }) => (
          <div key={words}>
            <dt>{words}</dt>
            <dd className="reading">{formatMinutes(minutes)}</dd>
            <dd className={styles.bar}>
              <Jaws value={minutes} of={estimate?.minutes.p95 ?? minutes} />
            </dd>
          </div>
        ))}
      </dl>
      {rows.length > 0 && jobs < fewCases ? (
        <p className={styles.few}>So few jobs hardly make a spread: leave room when you quote.</p>
      ) : null}
    </Section>
  );
}
