import type { ReactNode } from "react";
import styles from "./LessonMark.module.css";

/** A lesson held in jaws, the way a measure is; `small` for lists, where one jaw is enough. */
export function LessonMark({ small = false, children }: Readonly<{ small?: boolean; children: ReactNode }>) {
  return (
    <p className={small ? styles.small : styles.lesson}>
      <span>{children}</span>
    </p>
  );
}
