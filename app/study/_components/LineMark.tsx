import styles from "./BeliefChart.module.css";

/** The mark of a line, told apart by its shape: square, ring, diamond, triangle. */
export function LineMark({ place }: Readonly<{ place: number }>) {
  switch (place) {
    case 0:
      return <rect className={styles.mark} data-place="0" x="-5" y="-5" width="10" height="10" />;
    case 1:
      return <circle className={styles.mark} data-place="1" r="5" />;
    case 2:
      return <path className={styles.mark} data-place="2" d="M0-6.5 6.5 0 0 6.5-6.5 0z" />;
    default:
      return <path className={styles.mark} data-place="3" d="M0-6 6 5H-6z" />;
  }
}
