import controls from "@/app/_components/controls.module.css";
import type { ContentProblem } from "@/lib/document/contentProblem";
import styles from "./Copies.module.css";

const copies = [
  {
    format: "zip",
    name: "Everything, as files",
    tells:
      "The Markdown files to the byte, and the photos, in one zip. This is the copy to keep: it can be brought back below.",
  },
  {
    format: "csv",
    name: "A table for a spreadsheet",
    tells:
      "A row a case: what came in, what it was, time and money. The path of checks does not fit in a row and is not in it.",
  },
  {
    format: "json",
    name: "Data for a program",
    tells: "Every field of every case with its story, as the published schema has them. No photos.",
  },
];

/** The copies that there are to take away, and what is in none of them. */
export function Copies({ problems }: Readonly<{ problems: readonly ContentProblem[] }>) {
  const unread = [...new Set(problems.map(({ file }) => file))];
  return (
    <>
      <ul className={styles.copies}>
        {copies.map(({ format, name, tells }) => (
          <li key={format}>
            <a className={controls.plain} href={`/casebook/exchange/${format}`} download>
              {name}
              <span className={styles.format}>{format}</span>
            </a>
            <p>{tells}</p>
          </li>
        ))}
      </ul>
      {unread.length > 0 ? (
        <p className={styles.unread}>
          Not in any copy, since {unread.length === 1 ? "it" : "they"} cannot be read: {unread.join(", ")}.
          Mend {unread.length === 1 ? "it" : "them"} first, or copy the folder itself.
        </p>
      ) : null}
    </>
  );
}
