import type { Answer } from "@/lib/consult/answer";
import { Section } from "../_components/Section";
import { SpreadRows } from "./SpreadRows";
import styles from "./TimeSpread.module.css";

/** Fewer like jobs than this are not a spread to quote from. */
const fewCases = 5;

/** How long like jobs took: half, four in five, all but one in twenty. */
export function TimeSpread({ estimate }: Pick<Answer, "estimate">) {
  const jobs = estimate?.cases ?? 0;
  return (
    <Section title="Time" id="time" aside={jobs === 1 ? "1 like job" : `${jobs} like jobs`}>
      {estimate ? (
        <SpreadRows minutes={estimate.minutes} />
      ) : (
        <p className="small soft">No like job to go by yet.</p>
      )}
      {estimate && jobs < fewCases ? (
        <p className={styles.few}>So few jobs hardly make a spread: leave room when you quote.</p>
      ) : null}
    </Section>
  );
}
