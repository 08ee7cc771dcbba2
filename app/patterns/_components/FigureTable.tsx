import type { ReactNode } from "react";
import styles from "./FigureTable.module.css";

type Props = Readonly<{
  label: string;
  head: readonly string[];
  rows: readonly Readonly<{ key: string; cells: readonly ReactNode[] }>[];
  /** Columns that hold words and not figures, from 0; the first always does. */
  words?: readonly number[];
}>;

/** A longer table would fill pages with rows of one job each. Chosen. */
const mostPrinted = 30;

/** The figures of a plot. A table wider than the page scrolls in itself; a keyboard can get hold of it. */
export function FigureTable({ label, head, rows, words = [] }: Props) {
  const kindOf = (column: number) => (column === 0 || words.includes(column) ? "words" : "figure");
  return (
    // biome-ignore lint/a11y/noNoninteractiveTabindex: what scrolls must be reached by keyboard
    <div className={styles.wide} tabIndex={0} role="region" aria-label={label}>
      <table className={styles.table} aria-label={label}>
        <thead>
          <tr>
            {head.map((title, column) => (
              <th key={title} scope="col" data-kind={kindOf(column)}>
                {title}
              </th>
            ))}
          </tr>
        </thead>
        <tbody>
          {rows.map(({ key, cells: [first, ...others] }) => (
            <tr key={key}>
              <th scope="row">{first}</th>
              {others.map((cell, at) => (
                <td key={head[at + 1]} data-kind={kindOf(at + 1)}>
                  {cell}
                </td>
              ))}
            </tr>
          ))}
        </tbody>
      </table>
      {rows.length > mostPrinted ? (
        <p className={`${styles.rest} small`}>
          The first {mostPrinted} of {rows.length}; the screen has all.
        </p>
      ) : null}
    </div>
  );
}
