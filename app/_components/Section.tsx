import type { ReactNode } from "react";
import styles from "./Section.module.css";

type Props = Readonly<{
  title: string;
  /** A word beside the title: what is counted, or how to use it. */
  aside?: ReactNode;
  /** Where a link may point. */
  id?: string;
  className?: string;
  children: ReactNode;
}>;

/** A part of a page, opening on the edge of a steel rule. */
export function Section({ title, aside, id, className, children }: Props) {
  return (
    <section className={className ? `${styles.cut} ${className}` : styles.cut} id={id} aria-label={title}>
      <header>
        <h2>{title}</h2>
        {aside === undefined ? null : <p>{aside}</p>}
      </header>
      {children}
    </section>
  );
}
