import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { labelOf } from "@/app/_components/labelOf";
import { RiskMark } from "@/app/_components/RiskMark";
import { Section } from "@/app/_components/Section";
import { getShop } from "@/app/_data/shop";
import { isCheckStep } from "@/lib/casebook/step";
import { outcomeTells } from "@/lib/consult/causes/outcomeTells";
import { countOutcomes } from "@/lib/consult/record/countOutcomes";
import { judgeTells } from "@/lib/consult/record/judgeTells";
import { seenFindings } from "@/lib/consult/record/seenFindings";
import { lowerFirst } from "@/lib/text/lowerFirst";
import { Bearing } from "../../_components/Bearing";
import { Cautions } from "../../_components/Cautions";
import { casesWith } from "../../_components/casesWith";
import styles from "../../_components/Entry.module.css";
import { EntryHead } from "../../_components/EntryHead";
import { OutcomeList } from "../../_components/OutcomeList";

type Props = Readonly<{ params: Promise<{ id: string }> }>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { vocabulary } = await getShop();
  return { title: labelOf(vocabulary.checks, (await params).id) };
}

/** A check: what it asks, how it is made, what it can find, what it costs, and what each finding tells. */
export default async function CheckPage({ params }: Props) {
  const { vocabulary, casebook, bench } = await getShop();
  const check = vocabulary.checks.get((await params).id);
  if (!check) notFound();
  const cases = casesWith(casebook, { check: check.id }, vocabulary);
  const seen = seenFindings(cases, vocabulary);
  const judged = [...vocabulary.causes.values()]
    .filter(({ findings }) => check.id in findings)
    .flatMap((cause) => judgeTells(cause, seen.get(cause.id)))
    .filter((one) => one.check === check.id && !one.others);
  const outcome = (id: string) => check.outcomes.find((one) => one.id === id)?.label ?? id;
  return (
    <main className="page" id="main">
      <EntryHead kind="Check" anchor="checks" title={check.label} synonyms={check.synonyms}>
        <RiskMark riskClass={check.risk} />
        <span>{check.minutes < 1 ? "under a minute" : formatMinutes(check.minutes)}</span>
        <span className="soft">
          {check.families.map((family) => labelOf(vocabulary.instruments, family)).join(", ")}
        </span>
      </EntryHead>
      <div className={styles.two}>
        <div>
          <Section title={check.question}>
            <p className={styles.prose}>{check.how}</p>
            {check.tools.length > 0 ? (
              <p className={styles.prose}>
                <b>Tools:</b> {check.tools.join(", ")}
              </p>
            ) : null}
          </Section>
          {check.needs.length > 0 ? (
            <Section title="What must be open first">
              <ul className={styles.list}>
                {check.needs.map((id) => (
                  <li key={id}>
                    <Link href={`/handbook/checks/${id}`} prefetch={false}>
                      {labelOf(vocabulary.checks, id)}
                    </Link>
                  </li>
                ))}
              </ul>
            </Section>
          ) : null}
          <Cautions ids={check.cautions} vocabulary={vocabulary} />
          <Section
            title="What it can find"
            aside="the causes that each finding speaks for and against, and how often it goes with them: by the handbook, and here"
          >
            <OutcomeList
              check={check}
              told={outcomeTells(check, bench)}
              found={countOutcomes(cases, check.id, vocabulary)}
              judged={judged}
            />
          </Section>
          <p className={styles.source}>Source: {check.source}.</p>
        </div>
        <div>
          <Bearing
            title="Cases in which it was made"
            cases={cases}
            all={{ check: check.id }}
            vocabulary={vocabulary}
            say={({ path }) =>
              [
                ...new Set(
                  path.flatMap((step) =>
                    isCheckStep(step) && step.check === check.id ? lowerFirst(outcome(step.found)) : [],
                  ),
                ),
              ].join(", ")
            }
            none="It has not been made in a case here yet."
          />
        </div>
      </div>
    </main>
  );
}
