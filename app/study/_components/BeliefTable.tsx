import { chanceIn100 } from "@/app/_components/chanceIn100";
import controls from "@/app/_components/controls.module.css";
import type { BeliefLine } from "@/lib/study/review/beliefLines";
import { gainPerMinute } from "@/lib/study/review/scorePath";
import type { WalkedCheck } from "@/lib/study/review/walkStudy";
import styles from "./BeliefTable.module.css";
import { taughtWord } from "./taughtWord";

type Props = Readonly<{
  lines: readonly (BeliefLine & Readonly<{ label: string }>)[];
  checks: readonly (WalkedCheck & Readonly<{ label: string }>)[];
  /** The place of the check that taught the most a minute. */
  best: number | null;
}>;

/** Check by check: how much it taught, and how likely each cause stood after it, in 100. */
export function BeliefTable({ lines, checks, best }: Props) {
  return (
    <>
      {/* A wide table scrolls in itself and not the page; a keyboard can get hold of it. */}
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard */}
      <div className={styles.wide} tabIndex={0} role="region" aria-label="Check by check">
        <table className={styles.table}>
          <thead>
            <tr>
              <th scope="col">After</th>
              <th scope="col">It taught</th>
              {lines.map(({ cause, label }) => (
                <th key={cause} scope="col">
                  {label}
                </th>
              ))}
            </tr>
          </thead>
          <tbody>
            <tr>
              <th scope="row">the start</th>
              <td />
              <Chances lines={lines} at={0} />
            </tr>
            {checks.map((check, at) => (
              <tr key={check.check} data-best={best === at ? "" : undefined}>
                <th scope="row">
                  {at + 1}. {check.label}
                </th>
                <td>{taughtWord(check.gainBits)}</td>
                <Chances lines={lines} at={at + 1} />
              </tr>
            ))}
          </tbody>
        </table>
      </div>
      <details className={styles.why}>
        <summary className={controls.opens}>How this is reckoned</summary>
        <p>
          The dotted line stands at 80 in 100: beyond it the evidence has spoken. Belief starts from how
          common each cause is; the complaint itself is not counted. What a check taught is measured in bits:
          an even yes or no tells one.
        </p>
        <ul>
          {checks.map((check) => (
            <li key={check.check}>
              {check.label}: {check.gainBits.toFixed(2)} bits, {gainPerMinute(check).toFixed(2)} a minute
            </li>
          ))}
        </ul>
      </details>
    </>
  );
}

function Chances({ lines, at }: Readonly<{ lines: Props["lines"]; at: number }>) {
  return lines.map(({ cause, probabilities }) => <td key={cause}>{chanceIn100(probabilities[at] ?? 0)}</td>);
}
