import Link from "next/link";
import type { ReactNode } from "react";
import styles from "./EntryList.module.css";

type Props = Readonly<{
  title?: ReactNode;
  entries: readonly Readonly<{ href: string; label: string; aside: string }>[];
}>;

/** A group of handbook entries by name. */
export function EntryList({ title, entries }: Props) {
  if (entries.length === 0) return null;
  return (
    <div className={styles.group}>
      {title ? <h3>{title}</h3> : null}
      <ul>
        {entries.map(({ href, label, aside }) => (
          <li key={href}>
            <Link href={href} prefetch={false}>
              <span>{label}</span>
              <span>{aside}</span>
            </Link>
          </li>
        ))}
      </ul>
    </div>
  );
}
