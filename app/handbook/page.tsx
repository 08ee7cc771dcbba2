import type { Metadata } from "next";
import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { groupWord } from "@/app/_components/groupWord";
import { RiskMark } from "@/app/_components/RiskMark";
import { Section } from "@/app/_components/Section";
import { getShop } from "@/app/_data/shop";
import { newestFirst } from "@/lib/casebook/newestFirst";
import { narrowCases } from "@/lib/text/narrowCases";
import { appliesTo } from "@/lib/vocabulary/appliesTo";
import { listFamilies } from "@/lib/vocabulary/listFamilies";
import { EntryList } from "./_components/EntryList";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Handbook" };

const riskClasses = [0, 1, 2, 3, 4];
const sayCases = (count = 0) => (count === 0 ? "" : `${count} ${count === 1 ? "case" : "cases"}`);

/** The handbook's contents: causes by what they come of, checks and repairs by what they put at stake, cautions; whole or for one family. */
export default async function HandbookPage({
  searchParams,
}: Readonly<{ searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>> }>) {
  const { vocabulary, casebook } = await getShop();
  const asked = (await searchParams).family;
  const families = listFamilies(vocabulary);
  const family = families.find(({ id }) => id === asked);
  const serves = (entry: Readonly<{ families: readonly string[] }>) =>
    appliesTo(vocabulary, entry.families, family?.id);
  const causes = [...vocabulary.causes.values()].filter(serves);
  const checks = [...vocabulary.checks.values()].filter(serves);
  const repairs = [...vocabulary.repairs.values()].filter(serves);
  const cautions = [...vocabulary.cautions.values()];
  const { facets: met } = narrowCases(newestFirst(casebook), {}, { caseOf: (kase) => kase, vocabulary });
  const parts = [
    { id: "causes", label: "Causes", count: causes.length },
    { id: "checks", label: "Checks", count: checks.length },
    { id: "repairs", label: "Repairs", count: repairs.length },
    { id: "cautions", label: "Cautions", count: cautions.length },
  ];
  return (
    <main className="page" id="main">
      <h1>Handbook</h1>
      <nav aria-label="Parts of the handbook" className={styles.parts}>
        {parts.map(({ id, label, count }) => (
          <a key={id} href={`#${id}`}>
            {label} <span className="soft">{count}</span>
          </a>
        ))}
        <Link href="/handbook/words" prefetch={false}>
          Words that the cases contradict
        </Link>
      </nav>
      <nav aria-label="Families" className={`${controls.row} ${styles.families}`}>
        <Link className={controls.plain} href="/handbook" aria-current={family ? undefined : "true"}>
          Every family
        </Link>
        {families.map(({ id, label }) => (
          <Link
            key={id}
            className={controls.plain}
            href={`/handbook?family=${id}`}
            aria-current={id === family?.id ? "true" : undefined}
          >
            {label}
          </Link>
        ))}
      </nav>
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
    </main>
  );
}
