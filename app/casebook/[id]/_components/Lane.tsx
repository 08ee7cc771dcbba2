import styles from "./Lane.module.css";

type Props = Readonly<{
  /** Probabilities before and after the step, 0..1, root first. */
  from: readonly number[];
  to: readonly number[];
}>;

const percent = (probability: number) => `${(100 * probability).toFixed(1)}%`;

/** Belief sliding across one step of the path: a line a cause, its mark where it stood afterwards. For the eye; the words stand beside it. */
export function Lane({ from, to }: Props) {
  const last = to.length - 1;
  return (
    <svg className={styles.lane} aria-hidden="true">
      <line className={styles.grid} x1="0" x2="0" y1="0" y2="100%" />
      <line className={styles.grid} x1="50%" x2="50%" y1="0" y2="100%" />
      <line className={styles.grid} x1="100%" x2="100%" y1="0" y2="100%" />
      {to.map((_, back) => {
        // The root is drawn last, over the others.
        const place = last - back;
        return (
          <line
            key={`line ${place}`}
            className={styles.line}
            data-place={place}
            x1={percent(from[place] ?? 0)}
            x2={percent(to[place] ?? 0)}
            y1="0"
            y2="100%"
          />
        );
      })}
      {to.map((_, back) => {
        const place = last - back;
        return (
          <svg key={`dot ${place}`} className={styles.at} x={percent(to[place] ?? 0)} y="100%">
            <Dot place={place} />
          </svg>
        );
      })}
    </svg>
  );
}

/** The mark of a cause: a square for the root, a ring and a diamond for the others. */
export function Dot({ place }: Readonly<{ place: number }>) {
  switch (place) {
    case 0:
      return <rect className={styles.dot} data-place="0" x="-5.5" y="-5.5" width="11" height="11" />;
    case 1:
      return <circle className={styles.dot} data-place="1" r="5" />;
    default:
      return <path className={styles.dot} data-place="2" d="M0-6.5 6.5 0 0 6.5-6.5 0z" />;
  }
}
