import { formatMinutes } from "../_components/formatMinutes";
import { Jaws } from "../_components/Jaws";
import styles from "./TimeSpread.module.css";

type Props = Readonly<{ minutes: Readonly<{ p50: number; p80: number; p95: number }> }>;

/** Minutes that half, four in five, and nineteen in twenty jobs keep within, side by side. */
export function SpreadRows({ minutes: { p50, p80, p95 } }: Props) {
  const rows = [
    { words: "half done in", minutes: p50 },
    { words: "four in five in", minutes: p80 },
    { words: "19 in 20 in", minutes: p95 },
  ];
  return (
    <dl className={styles.spread}>
      {rows.map(({ words, minutes }) => (
        <div key={words}>
          <dt>{words}</dt>
          <dd className="reading">{formatMinutes(minutes)}</dd>
          <dd className={styles.bar}>
            <Jaws value={minutes} of={p95} />
          </dd>
        </div>
      ))}
    </dl>
  );
}
