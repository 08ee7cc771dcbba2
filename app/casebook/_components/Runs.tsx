import type { ExcerptRun } from "@/lib/text/excerpt";
import styles from "./Runs.module.css";

/** A text with the words that were searched for underlined. */
export function Runs({ runs }: Readonly<{ runs: readonly ExcerptRun[] }>) {
  return runs.map(({ text, hit }, place) =>
    // Runs have no name of their own and never change places.
    hit ? (
      <mark key={`${place} ${text}`} className={styles.hit}>
        {text}
      </mark>
    ) : (
      text
    ),
  );
}
