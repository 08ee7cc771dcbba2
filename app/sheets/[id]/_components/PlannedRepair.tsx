import Link from "next/link";
import { Odds } from "@/app/_bench/Odds";
import { OddsTally } from "@/app/_bench/OddsTally";
import controls from "@/app/_components/controls.module.css";
import { labelOf } from "@/app/_components/labelOf";
import { partWords } from "@/app/_components/partWords";
import { RiskMark } from "@/app/_components/RiskMark";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import type { Case } from "@/lib/casebook/caseFile";
import { isRepairStep } from "@/lib/casebook/step";
import type { Warning } from "@/lib/consult/answer";
import { upperFirst } from "@/lib/text/upperFirst";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { LookFirst } from "./LookFirst";
import styles from "./PlanPart.module.css";

type Props = Readonly<{
  sheet: SheetVersion;
  kase: Case;
  planned: NonNullable<Case["plan"]>[number];
  /** Its place in the plan, from 0. */
  at: number;
  warning: Warning;
  vocabulary: Vocabulary;
}>;

/** Risk class of what cannot be undone. */
const noReturn = 4;

const resultWords = {
  fixed: "done: fixed it",
  better: "done: made it better",
  "no-change": "done: changed nothing",
  harm: "done: did harm",
} as const;

/** A chosen repair: how often it went wrong in like jobs and how, what can hurt, whether there is a way back, and what to check first. */
export function PlannedRepair({ sheet, kase, planned, at, warning, vocabulary }: Props) {
  const { harms } = warning;
  const done = kase.path.filter(isRepairStep).findLast(({ repair }) => repair === planned.repair);
  return (
    <article className={styles.planned} data-risk={warning.riskClass} data-done={done ? "" : undefined}>
      <h3>
        <Link className={controls.title} href={`/handbook/repairs/${planned.repair}`} prefetch={false}>
          {[warning.label, partWords(vocabulary, planned.part ?? null)].filter(Boolean).join(", ")}
        </Link>
      </h3>
      <p className={styles.facts}>
        {done ? <b>{resultWords[done.result]}</b> : null}
        {planned.for ? <span>for {labelOf(vocabulary.causes, planned.for).toLowerCase()}</span> : null}
        {planned.from ? (
          <Link className={controls.link} href={`/casebook/${planned.from}`} prefetch={false}>
            as in case {planned.from}
          </Link>
        ) : null}
      </p>
      <p className={styles.facts}>
        <RiskMark riskClass={warning.riskClass} />
        <OddsTally warning={warning} />
      </p>
      <Odds warning={warning} />
      {warning.riskClass >= noReturn ? (
        <p className={styles.noWayBack}>
          <b>No way back.</b> Once this is begun it cannot be undone: tell the customer before, not after.
        </p>
      ) : null}
      {harms.length > 0 ? (
        <ul className={styles.harms} aria-label="What it did">
          {harms.map(({ case: id, what }) => (
            <li key={`${id} ${what}`}>
              {upperFirst(what)}{" "}
              <Link className={controls.link} href={`/casebook/${id}`} prefetch={false}>
                case {id}
              </Link>
            </li>
          ))}
        </ul>
      ) : (
        <p className={styles.why}>It can go wrong: {warning.why}</p>
      )}
      {warning.cautions.length > 0 ? (
        <p className={styles.cautions}>
          <b>Mind yourself:</b>
          {warning.cautions.map(({ id, label }) => (
            <Link
              key={id}
              className={`${controls.link} ${styles.hazard}`}
              href={`/handbook/cautions/${id}`}
              prefetch={false}
            >
              {label.toLowerCase()}
            </Link>
          ))}
          <span>The safety data sheet, local codes and licensed practice come first.</span>
        </p>
      ) : null}
      <LookFirst sheet={sheet} kase={kase} planned={planned} at={at} looks={warning.checkFirst} />
      <div className={`${controls.row} ${styles.after}`}>
        <Link
          className={controls.plain}
          href={`/sheets/${sheet.id}?what=repair+${planned.repair}#log`}
          prefetch={false}
        >
          {done ? "Log it again" : "Log what came of it"}
        </Link>
        <SheetForm sheet={sheet} wish="unplan" name={`unplan-${at}`}>
          <input type="hidden" name="at" value={at} />
          <button type="submit" className={controls.word}>
            Take it off<span className="heard">: {warning.label}</span>
          </button>
        </SheetForm>
      </div>
    </article>
  );
}
