import type { ReactNode } from "react";
import type { Mark } from "./marksOf";
import styles from "./SaysForm.module.css";

/** The sentence once more behind the box, underlined as it was taken; it also gives the box its height. */
export function Echo({ text, marks }: Readonly<{ text: string; marks: readonly Mark[] }>) {
  const pieces: ReactNode[] = [];
  let at = 0;
  for (const { from, to, kind } of marks) {
    pieces.push(text.slice(at, from));
    pieces.push(
      <u key={from} data-kind={kind}>
        {text.slice(from, to)}
      </u>,
    );
    at = to;
  }
  // The closing space gives a last empty line its height.
  return (
    <div className={styles.echo} aria-hidden="true">
      {pieces}
      {`${text.slice(at)} `}
    </div>
  );
}
