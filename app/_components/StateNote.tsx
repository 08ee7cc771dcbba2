import type { ReactNode } from "react";
import styles from "./StateNote.module.css";

type Props = Readonly<{
  title: string;
  /** `plain` for empty and waiting, `warn` for too little to go on, `fail` for what did not work. */
  tone?: "plain" | "warn" | "fail";
  /** 2 where it stands directly under the page's title, 3 (the default) inside a section. */
  level?: 2 | 3;
  children: ReactNode;
}>;

/** A designed state: nothing yet, nothing found, too few, or something failed; says what to do about it. */
export function StateNote({ title, tone = "plain", level = 3, children }: Props) {
  const Heading = level === 2 ? "h2" : "h3";
  return (
    <div className={styles.state} data-tone={tone}>
      <Heading>{title}</Heading>
      {children}
    </div>
  );
}
