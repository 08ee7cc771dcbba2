import styles from "./CheaperPath.module.css";

type Props = Readonly<{
  /** Of each check, in order. */
  minutes: readonly number[];
  /** What the whole width stands for. */
  of: number;
}>;

/** Narrower than this share of the width a piece has no room for its number. */
const leastForNumber = 0.045;

/** Checks one after another as pieces of a track, each as long as its minutes. For the eye; the words stand beside it. */
export function MinutesTrack({ minutes, of }: Props) {
  const percent = (value: number) => `${of === 0 ? 0 : (100 * value) / of}%`;
  const startOf = (at: number) => minutes.slice(0, at).reduce((sum, value) => sum + value, 0);
  return (
    <svg className={styles.track} aria-hidden="true">
      {minutes.map((value, at) => (
        <g key={`${at}`}>
          <rect className={styles.piece} x={percent(startOf(at))} width={percent(value)} y="1" height="26" />
          {of > 0 && value / of >= leastForNumber ? (
            <text className={styles.at} x={percent(startOf(at) + value / 2)} y="20">
              {at + 1}
            </text>
          ) : null}
        </g>
      ))}
    </svg>
  );
}
