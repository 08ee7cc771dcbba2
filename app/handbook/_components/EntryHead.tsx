import Link from "next/link";
import type { ReactNode } from "react";
import controls from "@/app/_components/controls.module.css";
import styles from "./EntryHead.module.css";

type Props = Readonly<{
  /** What kind of entry it is, and the part of the handbook that it stands in. */
  kind: string;
  anchor: string;
  title: string;
  synonyms: readonly string[];
  children?: ReactNode;
}>;

/** The head of a handbook page: where it stands, its name, and what else it is called at the bench. */
export function EntryHead({ kind, anchor, title, synonyms, children }: Props) {
  return (
    <header>
      <p className={styles.where}>
        <Link className={controls.link} href={`/handbook#${anchor}`} prefetch={false}>
          Handbook
        </Link>
        <span>{kind}</span>
      </p>
      <h1>{title}</h1>
      {synonyms.length > 0 ? (
        <p className={styles.also}>Also said: {synonyms.slice(0, 6).join(", ")}</p>
      ) : null}
      {children ? <div className={styles.facts}>{children}</div> : null}
    </header>
  );
}
