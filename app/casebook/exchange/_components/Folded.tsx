import type { ReactNode } from "react";
import styles from "./Folded.module.css";

/** Something shut until it is asked for. */
export function Folded({ label, children }: Readonly<{ label: string; children: ReactNode }>) {
  return (
    <details className={styles.folded}>
      <summary>{label}</summary>
      {children}
    </details>
  );
}
