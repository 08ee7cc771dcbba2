import Link from "next/link";
import { chanceIn100 } from "@/app/_components/chanceIn100";
import controls from "@/app/_components/controls.module.css";
import { HarmRate } from "@/app/_components/HarmRate";
import { labelOf } from "@/app/_components/labelOf";
import { partWords } from "@/app/_components/partWords";
import { RiskMark } from "@/app/_components/RiskMark";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import type { Case } from "@/lib/casebook/caseFile";
import { isRepairStep } from "@/lib/casebook/step";
import type { RepairOutlook } from "@/lib/consult/sheet/outlookOfRepair";
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
  outlook: RepairOutlook;
  vocabulary: Vocabulary;
}>;

const resultWords = {
  fixed: "done: fixed it",
  better: "done: made it better",
  "no-change": "done: changed nothing",
  harm: "done: did harm",
} as const;

/** A chosen repair: what it did in like cases, what can hurt, whether there is a way back, and what to check first. */
export function PlannedRepair({ sheet, kase, planned, at, outlook, vocabulary }: Props) {
  const { warning, likeDone, likeHarmed, interval, harms, noWayBack } = outlook;
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
        <HarmRate harmed={warning.harmed} done={warning.done} />
        {interval ? (
          <span>
            in the long run {chanceIn100(interval.low)} to {chanceIn100(interval.high)} in 100
          </span>
        ) : null}
        {likeDone > 0 ? (
          <span>
            in jobs like this one {likeHarmed} of {likeDone}
          </span>
        ) : null}
      </p>
      {noWayBack ? (
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
          <span>First comes the safety data sheet, local codes and licensed practice.</span>
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
