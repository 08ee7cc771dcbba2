import type { ReactNode } from "react";
import styles from "./BuildForm.module.css";

type Props = Readonly<{ title: string; meta: string; children: ReactNode }>;

/** A job that is in a lesson, or could be, with what can be done with it. */
export function BuildRow({ title, meta, children }: Props) {
  return (
    <li>
      <div>
        <b>{title}</b>
        <small>{meta}</small>
      </div>
      <div className={styles.acts}>{children}</div>
    </li>
  );
}
