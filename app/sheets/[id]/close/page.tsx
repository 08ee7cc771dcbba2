import type { Metadata } from "next";
import Link from "next/link";
import { notFound, redirect } from "next/navigation";
import controls from "@/app/_components/controls.module.css";
import job from "@/app/_components/JobPage.module.css";
import { Section } from "@/app/_components/Section";
import { getSheet } from "@/app/_data/getSheet";
import { getSettings } from "@/app/_data/settings";
import { getShop } from "@/app/_data/shop";
import { Money } from "@/app/casebook/[id]/_components/Money";
import { SheetForm } from "@/app/sheets/_components/SheetForm";
import fields from "@/app/sheets/_components/SheetForm.module.css";
import { TypedChoice } from "@/app/sheets/_components/TypedChoice";
import { TypedField } from "@/app/sheets/_components/TypedField";
import { consultSheet } from "@/lib/consult/sheet/consultSheet";
import { proposeClosing } from "@/lib/consult/sheet/proposeClosing";
import { partChoices } from "../_components/sheetChoices";
import { CauseRows } from "./_components/CauseRows";
import { LikeRows } from "./_components/LikeRows";
import { ProofTicks } from "./_components/ProofTicks";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Close the job" };

type Props = Readonly<{ params: Promise<{ id: string }> }>;

const outcomes = [
  { id: "fixed", label: "Fixed" },
  { id: "improved", label: "Improved" },
  { id: "not-fixed", label: "Not fixed" },
  { id: "declined", label: "Declined" },
];

/** A job written up in two minutes: most of it is proposed from its sheet. */
export default async function ClosePage({ params }: Props) {
  const { id } = await params;
  const found = await getSheet(id);
  if (!found) notFound();
  const { kase, kept, place } = found;
  if (!kase || kase.status === "closed") redirect(`/sheets/${place.id}`);
  const { bench, vocabulary, casebook } = await getShop();
  const { settings } = await getSettings();
  const answer = consultSheet(kase, bench);
  const closing = proposeClosing(kase, answer, vocabulary, settings?.hourCost);
  return (
    <main className="page" id="main">
      <p className={job.job}>
        <Link className={controls.link} href={`/sheets/${kase.id}`} prefetch={false}>
          Back to sheet {kase.id}
        </Link>
        <span>{kase.title}</span>
      </p>
      <h1>Close the job</h1>
      <datalist id="parts">
        {partChoices(vocabulary, kase.instrument).map((part) => (
          <option key={part} value={part} />
        ))}
      </datalist>
      <SheetForm
        sheet={{ id: place.id, text: kept.text, hash: kept.hash }}
        wish="close"
        name="close"
        className={styles.close}
      >
        <ProofTicks kase={kase} vocabulary={vocabulary} />
        <CauseRows kase={kase} causes={closing.causes} vocabulary={vocabulary} />
        <Section title="How it ended">
          <div className={fields.fields}>
            <TypedChoice
              name="outcome"
              label="Outcome"
              value={closing.outcome}
              none="Not said"
              options={outcomes}
            />
            <TypedField
              name="closed"
              label="Closed on"
              kind="day"
              value={kase.closed ?? new Date().toISOString().slice(0, 10)}
            />
            <TypedField
              name="minutes"
              label="Minutes it took"
              kind="number"
              value={closing.minutes}
              hint="the steps added up"
            />
            <TypedField name="charge" label="Charged" kind="number" value={closing.charge} />
            <TypedField
              name="swallowedMinutes"
              label="Minutes the shop swallowed"
              kind="number"
              value={closing.swallowedMinutes}
            />
            <TypedField
              name="swallowedMoney"
              label="Money the shop swallowed"
              kind="number"
              value={closing.swallowedMoney}
            />
          </div>
        </Section>
        <Money kase={{ ...kase, minutes: kase.minutes ?? (Number(closing.minutes) || undefined) }} />
        <LikeRows kase={kase} similar={answer.similar} cases={casebook.cases} />
        <Section title="For the next one">
          <div className={styles.next}>
            <TypedField
              name="lessons"
              label="What would you tell an apprentice? A line each"
              rows={2}
              value={kase.lessons.join("\n")}
            />
            <TypedField
              name="story"
              label="The story, if there is one, in Markdown"
              rows={5}
              value={kase.story}
            />
          </div>
        </Section>
        <p className={styles.send}>
          <button type="submit" className={controls.lead}>
            Close it into the casebook
          </button>
        </p>
      </SheetForm>
    </main>
  );
}
