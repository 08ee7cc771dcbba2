import styles from "./Likely.module.css";

/** What the answer rests on, where there is something to say of it. */
export function Remarks({ remarks }: Readonly<{ remarks: readonly string[] }>) {
  if (remarks.length === 0) return null;
  return (
    <ul className={styles.remarks}>
      {remarks.map((remark) => (
        <li key={remark}>{remark}</li>
      ))}
    </ul>
  );
}
