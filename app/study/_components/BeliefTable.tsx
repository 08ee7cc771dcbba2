import { chanceIn100 } from "@/app/_components/chanceIn100";
import type { BeliefLine } from "@/lib/study/beliefLines";
import { gainPerMinute } from "@/lib/study/scorePath";
import type { WalkedCheck } from "@/lib/study/walkStudy";
import styles from "./BeliefTable.module.css";

type Props = Readonly<{
  lines: readonly (BeliefLine & Readonly<{ label: string }>)[];
  checks: readonly (WalkedCheck & Readonly<{ label: string }>)[];
  /** The place of the check that taught the most a minute. */
  best: number | null;
}>;

/** Check by check: its minutes, what it taught, and how likely each cause stood after it. */
export function BeliefTable({ lines, checks, best }: Props) {
  return (
    // A wide table scrolls in itself and not the page; a keyboard can get hold of it.
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
    <div className={styles.wide} tabIndex={0} role="region" aria-label="Check by check">
      <table className={styles.table}>
        <thead>
          <tr>
            <th scope="col">After</th>
            <th scope="col">Minutes</th>
            <th scope="col">Taught, bits</th>
            <th scope="col">Bits a minute</th>
            {lines.map(({ cause, label }) => (
              <th key={cause} scope="col">
                {label}, in 100
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          <tr>
            <th scope="row">the start</th>
            <td />
            <td />
            <td />
            <Chances lines={lines} at={0} />
          </tr>
          {checks.map((check, at) => (
            <tr key={check.check} data-best={best === at ? "" : undefined}>
              <th scope="row">
                {at + 1}. {check.label}
                {best === at ? <span className={styles.best}>taught the most a minute</span> : null}
              </th>
              <td>{check.minutes}</td>
              <td>{check.gainBits.toFixed(2)}</td>
              <td>{gainPerMinute(check).toFixed(2)}</td>
              <Chances lines={lines} at={at + 1} />
            </tr>
          ))}
        </tbody>
      </table>
    </div>
  );
}

function Chances({ lines, at }: Readonly<{ lines: Props["lines"]; at: number }>) {
  return lines.map(({ cause, probabilities }) => <td key={cause}>{chanceIn100(probabilities[at] ?? 0)}</td>);
}
