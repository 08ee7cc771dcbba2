import { StateNote } from "../_components/StateNote";
import { BenchLink } from "./BenchLink";
import { type BenchQuery, readBenchQuery } from "./benchQuery";
import styles from "./NothingYet.module.css";

const examples = [
  "trumpet, 2nd valve slow coming back up, cleaned and oiled it, no change, no dents",
  "euph third valve hangs halfway down, others fine, fell off a chair last week",
  "all three valves heavy, oiled them, better for a day",
] as const;

/** The bench before anything was said: how to begin, and nothing guessed. */
export function NothingYet({ caseCount, bench }: Readonly<{ caseCount: number; bench: BenchQuery }>) {
  return (
    <StateNote level={2} title="Nothing said yet">
      <p>
        Say what came in, in your own words, or tap the valve that catches. Nothing is guessed before you do.{" "}
        {caseCount} {caseCount === 1 ? "case stands" : "cases stand"} behind the answers.
      </p>
      <p className="soft">To see how it works:</p>
      <ul className={styles.examples}>
        {examples.map((says) => (
          <li key={says}>
            <BenchLink ownWords to={{ ...readBenchQuery({}), instrument: bench.instrument, says }}>
              “{says}”
            </BenchLink>
          </li>
        ))}
      </ul>
    </StateNote>
  );
}
