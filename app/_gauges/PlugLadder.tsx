import type { LengthWords } from "@/lib/gauging/lengths/lengthWords";
import type { BracketAtDepth } from "@/lib/gauging/plugs/plugReport";
import type { ShownUnit } from "../_components/readUnit";
import styles from "./Ladder.module.css";
import { type Scale, scaleOf } from "./scale";

/** One bore on the ladder, with every plug that was tried in it. */
export type LadderRow = Readonly<{
  name: string;
  bracket: BracketAtDepth;
  passesMm: readonly number[];
  stopsMm: readonly number[];
}>;

type Props = Readonly<{ rows: readonly LadderRow[]; unit: ShownUnit; lengths: LengthWords }>;

/** Plugs as a ladder: what passes fills from the left, what stops hatches from the right, the bore lies in the gap between two jaws. */
export function PlugLadder({ rows, unit, lengths }: Props) {
  const sizes = rows.flatMap(({ passesMm, stopsMm }) => [...passesMm, ...stopsMm]);
  if (sizes.length === 0) return null;
  const scale = scaleOf(sizes, unit, (mm) =>
    unit === "mm" ? mm.toFixed(2) : (mm / 25.4).toFixed(3).replace(/^0/, ""),
  );
  return (
    <figure className={styles.ladder}>
      <svg className={styles.scale} height="22" aria-hidden="true">
        {scale.ticks.map(({ percent, label }) => (
          <text key={label} x={`${percent}%`} y="15" textAnchor="middle">
            {label}
          </text>
        ))}
      </svg>
      {rows.map((row) => (
        <div key={row.name}>
          <p className={styles.name}>
            <b>{row.name}</b> {gapWords(row, lengths)}
          </p>
          <Rung row={row} scale={scale} lengths={lengths} />
        </div>
      ))}
      <figcaption className={styles.key}>
        <span>
          <i data-is="passes" /> passes
        </span>
        <span>
          <i data-is="gap" /> it lies in here
        </span>
        <span>
          <i data-is="stops" /> stops
        </span>
      </figcaption>
    </figure>
  );
}

function gapWords({ bracket: { lowMm, highMm, contradictions } }: LadderRow, { size }: LengthWords): string {
  if (contradictions.length > 0) return "readings in dispute bound nothing";
  if (lowMm === null) return highMm === null ? "not gauged" : `under ${size(highMm)}, open below`;
  return highMm === null ? `${size(lowMm)} or more, open above` : `${size(lowMm)} to ${size(highMm)}`;
}

function Rung({ row, scale, lengths }: Readonly<{ row: LadderRow; scale: Scale; lengths: LengthWords }>) {
  const { bracket, passesMm, stopsMm, name } = row;
  const { lowMm, highMm } = bracket;
  const low = lowMm === null ? 0 : scale.percentOf(lowMm);
  const high = highMm === null ? 100 : scale.percentOf(highMm);
  const disputed = new Set(
    bracket.contradictions.flatMap(({ passedMm, stoppedMm }) => [passedMm, stoppedMm]),
  );
  const id = `stops-${name.replace(/\W+/g, "-")}`;
  return (
    <svg
      className={styles.rung}
      height="46"
      role="img"
      aria-label={`${name}: ${gapWords(row, lengths)}. Passed: ${list(passesMm, lengths)}. Stopped: ${list(stopsMm, lengths)}.`}
    >
      <defs>
        <pattern id={id} width="7" height="7" patternUnits="userSpaceOnUse" patternTransform="rotate(35)">
          <rect className={styles.hatch} width="1.8" height="7" />
        </pattern>
      </defs>
      <rect className={styles.ground} x="0" y="7" width="100%" height="32" />
      {lowMm === null ? null : <rect className={styles.passes} x="0" y="7" width={`${low}%`} height="32" />}
      {highMm === null ? null : (
        <rect
          className={styles.stops}
          x={`${high}%`}
          y="7"
          width={`${100 - high}%`}
          height="32"
          fill={`url(#${id})`}
        />
      )}
      {scale.ticks.map(({ percent, label }) => (
        <line key={label} className={styles.tick} x1={`${percent}%`} x2={`${percent}%`} y1="7" y2="39" />
      ))}
      {passesMm.map((mm) => (
        <PlugMark key={`p${mm}`} at={scale.percentOf(mm)} is={disputed.has(mm) ? "disputed" : "passed"} />
      ))}
      {stopsMm.map((mm) => (
        <PlugMark key={`s${mm}`} at={scale.percentOf(mm)} is={disputed.has(mm) ? "disputed" : "stopped"} />
      ))}
      {lowMm === null ? null : <Jaw at={low} side="left" />}
      {highMm === null ? null : <Jaw at={high} side="right" />}
    </svg>
  );
}

function PlugMark({ at, is }: Readonly<{ at: number; is: "passed" | "stopped" | "disputed" }>) {
  return <line className={styles.mark} data-is={is} x1={`${at}%`} x2={`${at}%`} y1="5" y2="41" />;
}

function Jaw({ at, side }: Readonly<{ at: number; side: "left" | "right" }>) {
  const lip = side === "left" ? "h7" : "h-7";
  return (
    <svg x={`${at}%`} overflow="visible" aria-hidden="true">
      <path className={styles.jaw} d={`M0 1${lip}M0 1V45M0 45${lip}`} />
    </svg>
  );
}

const list = (sizesMm: readonly number[], { size }: LengthWords) =>
  sizesMm.length === 0 ? "none" : sizesMm.map(size).join(", ");
