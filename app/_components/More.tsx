import type { ReactNode } from "react";
import controls from "./controls.module.css";
import styles from "./More.module.css";

type Props = Readonly<{ count: number; of: string; many?: string; children: ReactNode }>;

/** What comes after the first few, shut until asked for; the line says how much there is. Nothing when there is none. */
export function More({ count, of, many = `${of}s`, children }: Props) {
  if (count < 1) return null;
  return (
    <details className={styles.more}>
      <summary className={controls.opens}>
        {count} more {count === 1 ? of : many}
      </summary>
      {children}
    </details>
  );
}
