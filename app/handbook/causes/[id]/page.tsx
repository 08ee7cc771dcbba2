import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { HarmRate } from "@/app/_components/HarmRate";
import { labelOf } from "@/app/_components/labelOf";
import { RiskMark } from "@/app/_components/RiskMark";
import { Section } from "@/app/_components/Section";
import { getShop } from "@/app/_data/shop";
import { lessonStandings } from "@/lib/casebook/lessonStandings";
import { tellTales } from "@/lib/consult/causes/tellTales";
import { judgeTells } from "@/lib/consult/record/judgeTells";
import { seenFindings } from "@/lib/consult/record/seenFindings";
import { upperFirst } from "@/lib/text/upperFirst";
import { Bearing } from "../../_components/Bearing";
import { casesWith } from "../../_components/casesWith";
import styles from "../../_components/Entry.module.css";
import { EntryHead } from "../../_components/EntryHead";
import { LessonTried } from "../../_components/LessonTried";
import { SeenNote } from "../../_components/SeenNote";
import { TellTaleTable } from "../../_components/TellTaleTable";

type Props = Readonly<{ params: Promise<{ id: string }> }>;

/** Of the notes that tell of a cause a page shows so many. */
const notesShown = 8;

const roleWords = {
  root: "the root",
  contributing: "helped it along",
  "brought-on": "brought on by a repair",
} as const;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { vocabulary } = await getShop();
  return { title: labelOf(vocabulary.causes, (await params).id) };
}

/** A cause: how it comes about and comes in, what proves it, what points to it and what against it, and the cases that bear on it. */
export default async function CausePage({ params }: Props) {
  const { vocabulary, casebook, bench } = await getShop();
  const cause = vocabulary.causes.get((await params).id);
  if (!cause) notFound();
  const cases = casesWith(casebook, { cause: cause.id }, vocabulary);
  const judged = judgeTells(cause, seenFindings(cases, vocabulary).get(cause.id));
  const takenForIt = [...vocabulary.causes.values()].filter(({ mistakenFor }) =>
    mistakenFor.includes(cause.id),
  );
  const notes = vocabulary.causeNotes.get(cause.id)?.slice(0, notesShown) ?? [];
  const alike = [...new Set([...cause.mistakenFor, ...takenForIt.map(({ id }) => id)])];
  return (
    <main className="page" id="main">
      <EntryHead kind="Cause" anchor="causes" title={cause.label} synonyms={cause.synonyms}>
        <span>{upperFirst(cause.howCommon)}, by the handbook</span>
        <span>
          found in {cases.length} of {casebook.cases.size} cases here
        </span>
        <span className="soft">
          {cause.families.map((family) => labelOf(vocabulary.instruments, family)).join(", ")}
        </span>
      </EntryHead>
      <div className={styles.two}>
        <div>
          <Section title="How it comes about">
            <p className={styles.prose}>{cause.comesAbout}</p>
          </Section>
          <Section title="How to prove it">
            <p className={styles.prose}>{cause.prove}</p>
          </Section>
          {notes.length > 0 ? (
            <Section title="How it comes in" aside="as it is typed at the bench">
              <ul className={styles.told}>
                {notes.map((note) => (
                  <li key={note}>{note}</li>
                ))}
              </ul>
            </Section>
          ) : null}
          <Section
            title="What points to it"
            aside="the most telling checks first; cases count with the handbook"
          >
            <TellTaleTable told={tellTales(cause, bench)} judged={judged} vocabulary={vocabulary} />
            <SeenNote judged={judged} />
          </Section>
          <p className={styles.source}>Source: {cause.source}.</p>
        </div>
        <div>
          {alike.length > 0 ? (
            <Section title="Mistaken for">
              <ul className={styles.list}>
                {alike.map((id) => (
                  <li key={id}>
                    <Link href={`/handbook/causes/${id}`} prefetch={false}>
                      {labelOf(vocabulary.causes, id)}
                    </Link>
                  </li>
                ))}
              </ul>
            </Section>
          ) : null}
          <Section title="Repairs">
            {cause.repairs.length === 0 ? <p className="small soft">None is written down yet.</p> : null}
            <ul className={styles.list}>
              {cause.repairs.flatMap((id) => {
                const repair = vocabulary.repairs.get(id);
                const record = bench.repairs.get(id) ?? { done: 0, harmed: 0 };
                return repair ? (
                  <li key={id}>
                    <Link href={`/handbook/repairs/${id}`} prefetch={false}>
                      {repair.label}
                    </Link>
                    <p className={`${styles.row} small`}>
                      <RiskMark riskClass={repair.risk} />
                      <HarmRate harmed={record.harmed} done={record.done} />
                    </p>
                  </li>
                ) : (
                  []
                );
              })}
            </ul>
          </Section>
          <LessonTried cases={cases} standings={lessonStandings(casebook.cases.values())} />
          <Bearing
            title="Cases"
            cases={cases}
            all={{ cause: cause.id }}
            vocabulary={vocabulary}
            say={({ causes }) =>
              causes
                .filter((one) => one.cause === cause.id)
                .map(({ role }) => roleWords[role])
                .join(", ")
            }
            none="It has not been found in a case here yet."
          />
        </div>
      </div>
    </main>
  );
}
