import styles from "./WentBar.module.css";

type Props = Readonly<{ missed: number; nearly: number; got: number }>;

/** How many were missed, nearly got and got: a bar for the eye, the same in words beside it. */
export function WentBar({ missed, nearly, got }: Props) {
  const all = missed + nearly + got;
  if (all === 0) return null;
  const pieces = [
    { kind: "got", count: got, words: `${got} got` },
    { kind: "nearly", count: nearly, words: `${nearly} nearly` },
    { kind: "missed", count: missed, words: `${missed} missed` },
  ].filter(({ count }) => count > 0);
  const start = (at: number) => pieces.slice(0, at).reduce((sum, { count }) => sum + count, 0);
  return (
    <span className={styles.went}>
      <svg className={styles.bar} viewBox="0 0 100 10" preserveAspectRatio="none" aria-hidden="true">
        {pieces.map(({ kind, count }, at) => (
          <rect
            key={kind}
            data-kind={kind}
            x={(100 * start(at)) / all}
            width={(100 * count) / all}
            y="0"
            height="10"
          />
        ))}
      </svg>
      <span>{pieces.map(({ words }) => words).join(", ")}</span>
    </span>
  );
}
