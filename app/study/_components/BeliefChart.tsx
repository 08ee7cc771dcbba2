import type { BeliefLine } from "@/lib/study/review/beliefLines";
import { enoughProbability } from "@/lib/study/review/whenEnough";
import styles from "./BeliefChart.module.css";
import { LineMark } from "./LineMark";

type Props = Readonly<{
  lines: readonly (BeliefLine & Readonly<{ label: string; isRoot: boolean }>)[];
  /** How many checks were asked for: one place a check, and one before the first. */
  checks: number;
}>;

const heights = [0, 25, 50, 75, 100];
const percent = (share: number) => `${(100 * share).toFixed(2)}%`;
/** More numbers under the chart run into one another. */
const mostNumbers = 12;

/** How belief moved as the checks were asked for: a line and a mark a cause. The table beneath says the same in figures. */
export function BeliefChart({ lines, checks }: Props) {
  const x = (at: number) => percent(checks === 0 ? 0 : at / checks);
  const y = (probability: number) => percent(1 - probability);
  const every = Math.ceil((checks + 1) / mostNumbers);
  const places = Array.from({ length: checks + 1 }, (_, at) => at);
  return (
    <figure className={styles.chart}>
      <figcaption>
        <ul className={styles.legend}>
          {lines.map(({ cause, label, isRoot }, place) => (
            <li key={cause}>
              <svg width="18" height="18" viewBox="-9 -9 18 18" aria-hidden="true">
                <LineMark place={place} />
              </svg>
              {label}
              {isRoot ? <b>it was this</b> : null}
            </li>
          ))}
        </ul>
      </figcaption>
      <div className={styles.frame} aria-hidden="true">
        <svg className={styles.drawing}>
          {heights.map((height) => (
            <g key={height}>
              <line className={styles.grid} x1="0" x2="100%" y1={y(height / 100)} y2={y(height / 100)} />
              <text className={styles.height} x="-10" y={y(height / 100)} dy="5">
                {height}
              </text>
            </g>
          ))}
          <line
            className={styles.enough}
            x1="0"
            x2="100%"
            y1={y(enoughProbability)}
            y2={y(enoughProbability)}
          />
          {places
            .filter((at) => at % every === 0)
            .map((at) => (
              <text key={at} className={styles.place} x={x(at)} y="100%" dy="24">
                {at === 0 ? "start" : at}
              </text>
            ))}
          {[...lines.entries()].reverse().map(([place, { cause, probabilities }]) => (
            // The first is drawn last, over the others.
            <g key={cause}>
              {probabilities.slice(1).map((probability, at) => (
                <line
                  key={`${at}`}
                  className={styles.line}
                  data-place={place}
                  x1={x(at)}
                  x2={x(at + 1)}
                  y1={y(probabilities[at] ?? 0)}
                  y2={y(probability)}
                />
              ))}
              {probabilities.map((probability, at) => (
                <svg key={`${at}`} className={styles.at} x={x(at)} y={y(probability)}>
                  <LineMark place={place} />
                </svg>
              ))}
            </g>
          ))}
        </svg>
      </div>
    </figure>
  );
}
