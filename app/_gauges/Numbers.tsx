import styles from "./Numbers.module.css";

/** A row of figures: what, in inches, in millimetres. */
export type NumberRow = Readonly<{ what: string; inches: string; mm: string }>;

/** The numbers beside the drawings, both units, every open end in words. */
export function Numbers({ caption, rows }: Readonly<{ caption: string; rows: readonly NumberRow[] }>) {
  if (rows.length === 0) return null;
  return (
    <table className={styles.numbers}>
      <caption>{caption}</caption>
      <thead>
        <tr>
          <th scope="col">What</th>
          <th scope="col">Inches</th>
          <th scope="col">Millimetres</th>
        </tr>
      </thead>
      <tbody>
        {rows.map(({ what, inches, mm }) => (
          <tr key={what}>
            <th scope="row">{what}</th>
            <td>{inches}</td>
            <td>{mm}</td>
          </tr>
        ))}
      </tbody>
    </table>
  );
}
