import Link from "next/link";
import type { ReactNode } from "react";
import styles from "./CaseLine.module.css";
import controls from "./controls.module.css";

/** One row under a case's title: agrees, differs, unknown, was. */
export type CaseFact = Readonly<{ term: string; words: string; tone?: "plain" | "good" | "bad" }>;

type Props = Readonly<{
  id: string;
  title: string;
  /** Instrument, day, root cause: whatever places the case. */
  meta?: ReactNode;
  facts?: readonly CaseFact[];
  lesson?: string | undefined;
}>;

/** A past case in a list: its title leads to it, its facts stand under it. */
export function CaseLine({ id, title, meta, facts = [], lesson }: Props) {
  return (
    <article className={styles.line}>
      <h3>
        <Link className={controls.title} href={`/casebook/${id}`} prefetch={false}>
          {title}
        </Link>
      </h3>
      {meta ? <p className={styles.meta}>{meta}</p> : null}
      {facts.length > 0 ? (
        <dl>
          {facts.map(({ term, words, tone = "plain" }) => (
            <div key={term} data-tone={tone}>
              <dt>{term}</dt>
              <dd>{words}</dd>
            </div>
          ))}
        </dl>
      ) : null}
      {lesson ? <p className={styles.lesson}>{lesson}</p> : null}
    </article>
  );
}
