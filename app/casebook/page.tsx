import type { Metadata } from "next";
import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { SearchBox } from "@/app/_components/SearchBox";
import { getShop } from "@/app/_data/shop";
import type { FoundCase } from "@/lib/text/searchCases";
import { Chosen } from "./_components/Chosen";
import {
  chosenFields,
  longestWords,
  readCasebookQuery,
  type SearchParams,
} from "./_components/casebookQuery";
import { Facets } from "./_components/Facets";
import { Hit } from "./_components/Hit";
import { NothingFound } from "./_components/NothingFound";
import { SetAsideList } from "./_components/SetAsideList";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Casebook" };

type Props = Readonly<{ searchParams: Promise<SearchParams> }>;

/** As many cases as one page lays out in full. */
const shown = 50;

/** The casebook: one box, the ways to narrow down, and the cases that are left. */
export default async function CasebookPage({ searchParams }: Props) {
  const query = readCasebookQuery(await searchParams);
  const { casebook, search, vocabulary, problems } = await getShop();
  const { found, total, facets } = await search({ ...query, most: shown });
  const scaleMinutes = scaleOf(found);
  const facetList = <Facets query={query} counts={facets} vocabulary={vocabulary} />;
  return (
    <main className="page" id="main">
      <div className={styles.head}>
        <h1>
          <label htmlFor="q">Casebook</label>
        </h1>
        <p className={controls.row}>
          <Link className={controls.word} href="/casebook/exchange" prefetch={false}>
            Copies out, old jobs in
          </Link>
          <Link className={controls.plain} href="/add" prefetch={false}>
            Add a case
          </Link>
        </p>
      </div>
      <SearchBox
        path="/casebook"
        words={query.words}
        such="Words of a complaint, a cause, a part, a maker"
        carried={chosenFields(query)}
        longest={longestWords}
      />
      <Chosen query={query} vocabulary={vocabulary} found={total} all={casebook.cases.size} />
      <div className={styles.shelf}>
        <nav className={styles.beside} aria-label="Narrow it down">
          {facetList}
        </nav>
        <details className={styles.folded}>
          <summary>Narrow it down</summary>
          <nav aria-label="Narrow it down">{facetList}</nav>
        </details>
        <section aria-label="Cases found">
          <h2 className="heard">Cases found</h2>
          {found.map((hit) => (
            <Hit key={hit.case.id} hit={hit} vocabulary={vocabulary} scaleMinutes={scaleMinutes} />
          ))}
          {total === 0 ? <NothingFound query={query} all={casebook.cases.size} /> : null}
          {total > found.length ? (
            <p className={styles.cut}>
              The first {found.length} of {total} are shown. A word more, or a choice, brings the rest nearer.
            </p>
          ) : null}
        </section>
      </div>
      <SetAsideList problems={problems} />
    </main>
  );
}

/** One track for every bar, long enough for the longest, in whole hours. */
function scaleOf(found: readonly FoundCase[]): number {
  const longest = Math.max(
    60,
    ...found.flatMap(({ case: { minutes, quoted } }) => [minutes ?? 0, quoted?.minutes ?? 0]),
  );
  return 60 * Math.ceil(longest / 60);
}
