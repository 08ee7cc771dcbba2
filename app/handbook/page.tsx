import type { Metadata } from "next";
import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { groupWord } from "@/app/_components/groupWord";
import { RiskMark } from "@/app/_components/RiskMark";
import { SearchBox } from "@/app/_components/SearchBox";
import { Section } from "@/app/_components/Section";
import { StateNote } from "@/app/_components/StateNote";
import { getShop } from "@/app/_data/shop";
import { newestFirst } from "@/lib/casebook/newestFirst";
import { matchesWords } from "@/lib/text/matchesWords";
import { narrowCases } from "@/lib/text/narrowCases";
import { appliesTo } from "@/lib/vocabulary/appliesTo";
import { listFamilies } from "@/lib/vocabulary/listFamilies";
import { EntryList } from "./_components/EntryList";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Handbook" };

const longestWords = 100;
const riskClasses = [0, 1, 2, 3, 4];
const sayCases = (count = 0) => (count === 0 ? "" : `${count} ${count === 1 ? "case" : "cases"}`);

/** The handbook's contents: causes by what they come of, checks and repairs by what they put at stake, cautions; whole or for one family. */
export default async function HandbookPage({
  searchParams,
}: Readonly<{ searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>> }>) {
  const { vocabulary, casebook } = await getShop();
  const { family: asked, q } = await searchParams;
  const words = typeof q === "string" ? q.slice(0, longestWords) : "";
  const families = listFamilies(vocabulary);
  const family = families.find(({ id }) => id === asked);
  const isCalled = ({ label, synonyms }: Readonly<{ label: string; synonyms: readonly string[] }>) =>
    [label, ...synonyms].some((name) => matchesWords(name, words));
  const serves = (entry: Readonly<{ families: readonly string[] }>) =>
    appliesTo(vocabulary, entry.families, family?.id);
  const causes = [...vocabulary.causes.values()].filter(serves).filter(isCalled);
  const checks = [...vocabulary.checks.values()].filter(serves).filter(isCalled);
  const repairs = [...vocabulary.repairs.values()].filter(serves).filter(isCalled);
  const cautions = [...vocabulary.cautions.values()].filter(isCalled);
  const { facets: met } = narrowCases(newestFirst(casebook), {}, { caseOf: (kase) => kase, vocabulary });
  const parts = [
    { id: "causes", label: "Causes", count: causes.length },
    { id: "checks", label: "Checks", count: checks.length },
    { id: "repairs", label: "Repairs", count: repairs.length },
    { id: "cautions", label: "Cautions", count: cautions.length },
  ];
  const found = parts.reduce((sum, { count }) => sum + count, 0);
  const carried = words.trim() ? `&${new URLSearchParams({ q: words })}` : "";
  return (
    <main className="page" id="main">
      <h1>
        <label htmlFor="q">Handbook</label>
      </h1>
      <SearchBox
        path="/handbook"
        words={words}
        such="What it is called: bore gauge, stuck slide"
        carried={family ? [["family", family.id]] : []}
        longest={longestWords}
      />
      <p className="heard" role="status">
        {found} {found === 1 ? "entry" : "entries"}
      </p>
      <nav aria-label="Parts of the handbook" className={styles.parts}>
        {parts
          .filter(({ count }) => count > 0)
          .map(({ id, label, count }) => (
            <a key={id} className={controls.link} href={`#${id}`}>
              {label} <span className="soft">{count}</span>
            </a>
          ))}
        <Link className={controls.link} href="/handbook/words" prefetch={false}>
          Words that the cases contradict
        </Link>
      </nav>
      <nav aria-label="Families" className={`${controls.row} ${styles.families}`}>
        <Link
          className={controls.plain}
          href={carried ? `/handbook?${carried.slice(1)}` : "/handbook"}
          aria-current={family ? undefined : "true"}
        >
          Every family
        </Link>
        {families.map(({ id, label }) => (
          <Link
            key={id}
            className={controls.plain}
            href={`/handbook?family=${id}${carried}`}
            aria-current={id === family?.id ? "true" : undefined}
          >
            {label}
          </Link>
        ))}
      </nav>
      {found === 0 ? (
        <StateNote level={2} title="Nothing in the handbook is called that.">
          <p>Try another name for the part, or the beginning of a word.</p>
          <p className={controls.row}>
            <Link className={controls.plain} href="/handbook" prefetch={false}>
              The whole handbook
            </Link>
            <Link
              className={controls.plain}
              href={`/casebook?${new URLSearchParams({ q: words })}`}
              prefetch={false}
            >
              Look in the casebook
            </Link>
          </p>
        </StateNote>
      ) : null}
      {causes.length > 0 ? (
        <Section title="Causes" id="causes" aside="why it does not work, by what it comes of">
          <div className={styles.groups}>
            {[...new Set(causes.map(({ group }) => group))].map((group) => (
              <EntryList
                key={group}
                title={groupWord(group)}
                entries={causes
                  .filter((cause) => cause.group === group)
                  .map(({ id, label }) => ({
                    href: `/handbook/causes/${id}`,
                    label,
                    aside: sayCases(met.cause.get(id)),
                  }))}
              />
            ))}
          </div>
        </Section>
      ) : null}
      {checks.length > 0 ? (
        <Section title="Checks" id="checks" aside="what one does to learn something, the safest first">
          <div className={styles.groups}>
            {riskClasses.map((risk) => (
              <EntryList
                key={risk}
                title={<RiskMark riskClass={risk} />}
                entries={checks
                  .filter((check) => check.risk === risk)
                  .map(({ id, label, minutes }) => ({
                    href: `/handbook/checks/${id}`,
                    label,
                    aside: `${minutes} min`,
                  }))}
              />
            ))}
          </div>
        </Section>
      ) : null}
      {repairs.length > 0 ? (
        <Section title="Repairs" id="repairs" aside="what one does to mend, the safest first">
          <div className={styles.groups}>
            {riskClasses.map((risk) => (
              <EntryList
                key={risk}
                title={<RiskMark riskClass={risk} />}
                entries={repairs
                  .filter((repair) => repair.risk === risk)
                  .map(({ id, label }) => ({
                    href: `/handbook/repairs/${id}`,
                    label,
                    aside: sayCases(met.repair.get(id)),
                  }))}
              />
            ))}
          </div>
        </Section>
      ) : null}
      {cautions.length > 0 ? (
        <Section title="Cautions" id="cautions" aside="what can hurt a person at the bench">
          <div className={styles.groups}>
            <EntryList
              entries={cautions.map(({ id, label }) => ({
                href: `/handbook/cautions/${id}`,
                label,
                aside: "",
              }))}
            />
          </div>
        </Section>
      ) : null}
    </main>
  );
}
