import styles from "./Jaws.module.css";

type Props = Readonly<{
  /** What is held between the jaws, in the unit of the track; cut off at its ends. */
  value: number;
  /** The length of the track; default 100. */
  of?: number;
  /** What was promised: the part beyond it is hatched as over. */
  promised?: number;
}>;

const tenths = [10, 20, 30, 40, 50, 60, 70, 80, 90];
const share = (value: number, of: number) => (of > 0 ? Math.min(100, Math.max(0, (100 * value) / of)) : 0);

/** A quantity held between a fixed and a sliding jaw, over a track marked in tenths. For the eye only: the number stands beside it in words. */
export function Jaws({ value, of = 100, promised }: Props) {
  const end = share(value, of);
  const kept = promised === undefined ? end : Math.min(end, share(promised, of));
  return (
    <svg className={styles.jaws} aria-hidden="true">
      <line className={styles.track} x1="0" x2="100%" y1="15.5" y2="15.5" />
      {tenths.map((tenth) => (
        <line key={tenth} className={styles.track} x1={`${tenth}%`} x2={`${tenth}%`} y1="12" y2="16" />
      ))}
      <line className={styles.track} x1="100%" x2="100%" y1="0" y2="16" />
      <rect className={styles.bar} y="1" width={`${kept}%`} height="10" />
      {kept < end ? <OverHatch from={kept} to={end} /> : null}
      <line className={styles.jaw} x1="1.5" x2="1.5" y1="-1" y2="16" />
      <line className={styles.jaw} x1={`${end}%`} x2={`${end}%`} y1="-1" y2="16" />
    </svg>
  );
}

function OverHatch({ from, to }: Readonly<{ from: number; to: number }>) {
  return (
    <>
      <defs>
        <pattern
          id="over-hatch"
          width="6"
          height="6"
          patternUnits="userSpaceOnUse"
          patternTransform="rotate(35)"
        >
          <rect className={styles.over} width="2.2" height="6" />
        </pattern>
      </defs>
      <rect x={`${from}%`} y="1" width={`${to - from}%`} height="10" fill="url(#over-hatch)" />
    </>
  );
}
