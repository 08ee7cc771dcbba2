import type { Clearance } from "@/lib/gauging/fits/clearance";
import type { ShownUnit } from "../_components/readUnit";
import styles from "./Ladder.module.css";
import { scaleOf } from "./scale";

const looks = { "sure-clearance": "clear", "sure-interference": "tight", undecided: "open" } as const;
const words = {
  "sure-clearance": "clear for certain",
  "sure-interference": "tight for certain",
  undecided: "not decided",
};

/** Bore less piston on a line with zero in it: tight at the left, clear at the right; an end that nothing bounds runs off the edge. */
export function ClearanceBar({ clearance, unit }: Readonly<{ clearance: Clearance; unit: ShownUnit }>) {
  const { leastMm, mostMm, standing } = clearance;
  const perMm = unit === "mm" ? 1 : 1 / 0.0254;
  const label = (mm: number) => {
    const amount = mm * perMm;
    const figures = Math.abs(amount).toFixed(unit === "mm" ? 2 : Math.abs(amount % 1) > 0.01 ? 1 : 0);
    return `${amount > 1e-9 ? "+" : amount < -1e-9 ? "−" : ""}${figures}`;
  };
  const scale = scaleOf([0, leastMm ?? 0, mostMm ?? 0], unit, label);
  const from = leastMm === null ? 0 : scale.percentOf(leastMm);
  const to = mostMm === null ? 100 : scale.percentOf(mostMm);
  const zero = scale.percentOf(0);
  return (
    <figure className={styles.signed}>
      <p className={styles.ends} aria-hidden="true">
        <span className={styles.bad}>tight</span>
        <span className={styles.good}>clear</span>
      </p>
      <svg
        className={styles.rung}
        height="66"
        role="img"
        aria-label={`Bore less piston: ${leastMm === null ? "open" : label(leastMm)} to ${mostMm === null ? "open" : label(mostMm)} ${unit === "mm" ? "mm" : "thou"}, ${words[standing]}`}
      >
        <rect className={styles.ground} x="0" y="4" width="100%" height="34" />
        <rect
          className={styles[looks[standing]]}
          x={`${from}%`}
          y="7"
          width={`${Math.max(0.5, to - from)}%`}
          height="28"
        />
        {scale.ticks.map((tick) => (
          <g key={tick.label}>
            <line className={styles.tick} x1={`${tick.percent}%`} x2={`${tick.percent}%`} y1="4" y2="38" />
            <text className={styles.figure} x={`${tick.percent}%`} y="56" textAnchor="middle">
              {tick.label}
            </text>
          </g>
        ))}
        <line className={styles.zero} x1={`${zero}%`} x2={`${zero}%`} y1="0" y2="42" />
      </svg>
      <figcaption className={styles.key}>
        {unit === "mm" ? "Millimetres" : "Thou"} of diameter, bore less piston. The thick line is line to
        line.
      </figcaption>
    </figure>
  );
}
