import type { ReactNode } from "react";
import styles from "./More.module.css";

/** What comes after the first few, shut until asked for; the line says how much there is. Nothing when there is none. */
export function More({ count, of, children }: Readonly<{ count: number; of: string; children: ReactNode }>) {
  if (count < 1) return null;
  return (
    <details className={styles.more}>
      <summary>
        {count} more {count === 1 ? of : `${of}s`}
      </summary>
      {children}
    </details>
  );
}
