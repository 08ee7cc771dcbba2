import styles from "./Tally.module.css";

/** More cells than this no eye counts; then the words alone stand. */
const mostCells = 24;
/** Fewer are read off the words at once. */
const fewestCells = 3;

/** k of n as filled cells, for the eye only: the words stand beside it. */
export function Tally({ k, n }: Readonly<{ k: number; n: number }>) {
  if (n < fewestCells || n > mostCells) return null;
  const cells = Array.from({ length: n }, (_, place) => place);
  return (
    <svg className={styles.tally} width={7 * n + 1} height="16" aria-hidden="true">
      {cells.map((place) => (
        <rect
          key={place}
          className={place < k ? styles.harmed : styles.sound}
          x={7 * place + 0.5}
          y="1"
          width="6"
          height="14"
        />
      ))}
    </svg>
  );
}
