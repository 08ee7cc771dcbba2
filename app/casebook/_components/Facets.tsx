import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import type { FacetName } from "@/lib/text/facets";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { type CasebookQuery, casebookHref, chooseFacet } from "./casebookQuery";
import styles from "./Facets.module.css";
import { facetTitles, facetWords, listedFacets } from "./facetWords";

type Counts = Readonly<Record<FacetName, ReadonlyMap<string, number>>>;
type Props = Readonly<{ query: CasebookQuery; counts: Counts; vocabulary: Vocabulary }>;

/** As many values as are taken in at a glance; the rest opens. */
const shownFirst = 6;

/** The ways to narrow the casebook down, each value a link that says how many cases it leaves. */
export function Facets({ query, counts, vocabulary }: Props) {
  return (
    <>
      {listedFacets.map((name) => {
        const values = [...counts[name]]
          .map(([value, count]) => ({ value, count, words: facetWords(vocabulary, name, value) }))
          .sort(name === "year" ? byYear : byCount);
        if (values.length === 0) return null;
        const list = (some: typeof values) => (
          <ul>
            {some.map(({ value, count, words }) => (
              <li key={value}>
                <FacetLink query={query} name={name} value={value} count={count} words={words} />
              </li>
            ))}
          </ul>
        );
        const rest = values.slice(shownFirst);
        return (
          <div key={name} className={styles.facet}>
            <h2>{facetTitles[name]}</h2>
            {list(values.slice(0, shownFirst))}
            {rest.length > 0 ? (
              <details open={rest.some(({ value }) => query.choice[name] === value)}>
                <summary className={`${controls.opens} ${styles.more}`}>{rest.length} more</summary>
                {list(rest)}
              </details>
            ) : null}
          </div>
        );
      })}
    </>
  );
}

type Counted = Readonly<{ value: string; count: number; words: string }>;
const byCount = (a: Counted, b: Counted) => b.count - a.count || (a.words < b.words ? -1 : 1);
const byYear = (a: Counted, b: Counted) => (a.value < b.value ? 1 : -1);

type LinkProps = Readonly<{
  query: CasebookQuery;
  name: FacetName;
  value: string;
  count: number;
  words: string;
}>;

function FacetLink({ query, name, value, count, words }: LinkProps) {
  const isChosen = query.choice[name] === value;
  return (
    <Link
      href={casebookHref(chooseFacet(query, name, isChosen ? undefined : value))}
      prefetch={false}
      scroll={false}
      aria-current={isChosen ? "true" : undefined}
    >
      <span>{words}</span>
      <span>
        {count}
        <span className="heard"> {count === 1 ? "case" : "cases"}</span>
      </span>
    </Link>
  );
}
