import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { More } from "@/app/_components/More";
import styles from "./EntryLinks.module.css";

type Entry = Readonly<{ href: string; label: string; aside?: string }>;
type Props = Readonly<{ title: string; none: string; entries: readonly Entry[] }>;

const shownFirst = 8;

/** Entries of the handbook under a title, the first few at once. */
export function EntryLinks({ title, none, entries }: Props) {
  const list = (some: readonly Entry[]) => (
    <ul className={styles.list}>
      {some.map(({ href, label, aside }) => (
        <li key={href}>
          <Link className={controls.link} href={href} prefetch={false}>
            {label}
          </Link>
          {aside ? <span>{aside}</span> : null}
        </li>
      ))}
    </ul>
  );
  return (
    <div>
      <h3 className={styles.title}>
        {title} <span className="soft">{entries.length > 0 ? entries.length : ""}</span>
      </h3>
      {entries.length === 0 ? <p className="small soft">{none}</p> : null}
      {list(entries.slice(0, shownFirst))}
      <More count={entries.length - shownFirst} of="entry" many="entries">
        {list(entries.slice(shownFirst))}
      </More>
    </div>
  );
}
