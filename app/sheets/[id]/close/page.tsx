import type { Metadata } from "next";
import Link from "next/link";
import { notFound, redirect } from "next/navigation";
import { chanceIn100 } from "@/app/_components/chanceIn100";
import controls from "@/app/_components/controls.module.css";
import { LikeCase } from "@/app/_components/LikeCase";
import { Section } from "@/app/_components/Section";
import { getSheet } from "@/app/_data/getSheet";
import { getShop } from "@/app/_data/shop";
import { choicesOf } from "@/app/add/_components/choices";
import { SheetForm } from "@/app/sheets/_components/SheetForm";
import fields from "@/app/sheets/_components/SheetForm.module.css";
import { TypedChoice } from "@/app/sheets/_components/TypedChoice";
import { TypedField } from "@/app/sheets/_components/TypedField";
import { consultSheet } from "@/lib/consult/sheet/consultSheet";
import { proposeClosing } from "@/lib/consult/sheet/proposeClosing";
import { partChoices } from "../_components/sheetChoices";
import { ProofTicks } from "./_components/ProofTicks";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Close the job" };

type Props = Readonly<{ params: Promise<{ id: string }> }>;

const roles = [
  { id: "root", label: "Root" },
  { id: "contributing", label: "Helped it along" },
  { id: "brought-on", label: "Our repair brought it on" },
];
const outcomes = [
  { id: "fixed", label: "Fixed" },
  { id: "improved", label: "Improved" },
  { id: "not-fixed", label: "Not fixed" },
  { id: "declined", label: "Declined" },
];
const shownLike = 2;

/** A job written up in two minutes: most of it is proposed from its sheet. */
export default async function ClosePage({ params }: Props) {
  const { id } = await params;
  const found = await getSheet(id);
  if (!found) notFound();
  const { kase, kept, place } = found;
  if (!kase || kase.status === "closed") redirect(`/sheets/${place.id}`);
  const { bench, vocabulary } = await getShop();
  const answer = consultSheet(kase, bench);
  const closing = proposeClosing(kase, answer, vocabulary);
  const choices = choicesOf(vocabulary);
  const blank = { from: "", cause: "", part: "", role: "", probability: undefined };
  const rows = [...closing.causes, blank];
  return (
    <main className="page" id="main">
      <p>
        <Link href={`/sheets/${kase.id}`} prefetch={false}>
          Back to sheet {kase.id}
        </Link>
      </p>
      <h1>Close: {kase.title}</h1>
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
        <Section title="What it was" aside="proposed from what was found; put it right">
          <ul className={styles.causes}>
            {rows.map((row, at) => (
              <li key={`cause ${at}`} className={fields.fields}>
                <input type="hidden" name={`cause.${at}.from`} value={row.from} />
                <TypedChoice
                  name={`cause.${at}.cause`}
                  label={`Cause ${at + 1}`}
                  value={row.cause}
                  none="None"
                  groups={choices.causes}
                  {...(row.probability === undefined
                    ? {}
                    : { hint: `${chanceIn100(row.probability)} in 100 by what was found` })}
                />
                <TypedField
                  name={`cause.${at}.part`}
                  label={`Part of cause ${at + 1}`}
                  value={row.part}
                  list="parts"
                />
                <TypedChoice
                  name={`cause.${at}.role`}
                  label={`Role of cause ${at + 1}`}
                  value={row.role}
                  none="Not said"
                  options={roles}
                />
              </li>
            ))}
          </ul>
        </Section>
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
              value={String(kase.swallowed?.money ?? "")}
            />
          </div>
        </Section>
        <Section title="For the next one">
          <TypedField
            name="lessons"
            label="What would you tell an apprentice? A line each"
            rows={2}
            value={kase.lessons.join("\n")}
            hint={`What was different from other jobs like it? ${answer.similar
              .slice(0, shownLike)
              .map(({ title }) => `“${title}”`)
              .join(", ")}`}
          />
          <TypedField
            name="story"
            label="The story, if there is one, in Markdown"
            rows={5}
            value={kase.story}
          />
        </Section>
        <p className={fields.buttons}>
          <button type="submit" className={controls.lead}>
            Close it into the casebook
          </button>
        </p>
      </SheetForm>
      <Section title="It looks like these">
        {answer.similar.length === 0 ? <p className="small soft">No other case is like it.</p> : null}
        <div className={styles.like}>
          {answer.similar.slice(0, shownLike).map((like) => (
            <LikeCase key={like.case} like={like} />
          ))}
        </div>
      </Section>
    </main>
  );
}
