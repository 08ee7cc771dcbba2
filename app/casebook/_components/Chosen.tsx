import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { Piece } from "@/app/_components/Piece";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./Chosen.module.css";
import { type CasebookQuery, casebookHref, chooseFacet, chosenFields } from "./casebookQuery";
import { facetTitles, facetWords } from "./facetWords";

type Props = Readonly<{ query: CasebookQuery; vocabulary: Vocabulary; found: number; all: number }>;

/** What was chosen, each a piece that a tap takes away, and how many cases it leaves. */
export function Chosen({ query, vocabulary, found, all }: Props) {
  const chosen = chosenFields(query);
  return (
    <p className={styles.chosen}>
      {chosen.map(([name, value]) => (
        <Link
          key={name}
          href={casebookHref(chooseFacet(query, name, undefined))}
          prefetch={false}
          scroll={false}
          className={styles.piece}
        >
          <Piece about={facetTitles[name].toLowerCase()}>
            {facetWords(vocabulary, name, value)}
            <span aria-hidden="true" className={styles.cross}>
              ×
            </span>
            <span className="heard">, take away</span>
          </Piece>
        </Link>
      ))}
      {chosen.length > 1 ? (
        <Link
          className={controls.word}
          href={casebookHref({ ...query, choice: {} })}
          prefetch={false}
          scroll={false}
        >
          Clear all {chosen.length}
        </Link>
      ) : null}
      <span className={styles.count} role="status">
        {found} of {all} {all === 1 ? "case" : "cases"}
      </span>
    </p>
  );
}
