import type { ReactNode } from "react";
import styles from "./Piece.module.css";

/** How a piece is held: in both jaws, in dashed ones (not so), in one (not understood), or by the tool itself. */
export type Hold = "held" | "not" | "loose" | "said";

type Props = Readonly<{
  hold?: Hold;
  /** What it is about: valve 3, instrument. */
  about?: string | undefined;
  children: ReactNode;
}>;

/** A finding, or a choice, held like a measure. Presentational: put it in a summary, link or button to make it act. */
export function Piece({ hold = "held", about, children }: Props) {
  return (
    <span className={styles.piece} data-hold={hold}>
      {about ? <small>{about}</small> : null}
      <b>{children}</b>
    </span>
  );
}
