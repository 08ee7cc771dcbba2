import Link from "next/link";
import { SpreadRows } from "@/app/_bench/SpreadRows";
import { chanceIn100 } from "@/app/_components/chanceIn100";
import controls from "@/app/_components/controls.module.css";
import { formatDay } from "@/app/_components/formatDay";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { formatMoney } from "@/app/_components/formatMoney";
import { Section } from "@/app/_components/Section";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import fields from "@/app/sheets/_components/SheetForm.module.css";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import type { ShopSettings } from "@/lib/casebook/settings/shopSettings";
import type { JobEstimate } from "@/lib/consult/quote/estimateJob";
import type { RepairTail } from "@/lib/consult/quote/harmTail";
import { chanceOfLoss, chanceOfOverrun, proposePrice } from "@/lib/estimate/proposePrice";
import styles from "./QuotePart.module.css";

type Props = Readonly<{
  sheet: SheetVersion;
  kase: Case;
  estimate: JobEstimate | undefined;
  settings: ShopSettings | undefined;
}>;

/** Minutes are promised in steps of five. */
const promiseStep = 5;

/** What to promise: how long jobs like it take, what going wrong adds, a price with its chance of losing, and what was promised. */
export function QuotePart({ sheet, kase, estimate, settings }: Props) {
  const { quoted } = kase;
  const proposed = estimate && settings ? proposePrice(estimate.minutes, settings) : undefined;
  const promise = estimate ? promiseStep * Math.ceil(estimate.p80 / promiseStep) : undefined;
  return (
    <Section
      title="What to promise"
      id="quote"
      aside={estimate ? `from ${estimate.like.length} like jobs` : undefined}
    >
      {estimate ? (
        <>
          <SpreadRows minutes={estimate} />
          <p className={styles.basis}>
            {estimate.learnedFrom > 0
              ? `Drawn so that these figures held for ${estimate.learnedFrom} past jobs, each asked about as if it had never happened.`
              : "Too few finished jobs to tell how far these figures hold."}
            {estimate.thin ? " Few jobs are really like this one: leave room." : ""}
          </p>
          {estimate.tail.repairs.map((tail) => (
            <p key={tail.repair} className={styles.tail}>
              {tailWords(tail)}
            </p>
          ))}
        </>
      ) : (
        <p className="small soft">No like job to go by yet.</p>
      )}
      {estimate && settings && proposed !== undefined ? (
        <p className={styles.price}>
          <span className="reading">{formatMoney(proposed)}</span>
          <span>
            would leave {settings.margin} in 100 on average; the shop loses on it in{" "}
            {lossWords(chanceOfLoss(proposed, estimate.minutes, settings))} jobs
          </span>
        </p>
      ) : null}
      <p className="unprinted">
        <Link className={`${controls.link} ${styles.shop}`} href="/shop" prefetch={false}>
          {settings ? "What the shop reckons with" : "Say what an hour costs, and a price is proposed"}
        </Link>
      </p>
      {quoted ? (
        <p className={styles.given}>
          <b>
            Promised{quoted.on ? ` on ${formatDay(quoted.on)}` : ""}: {formatMinutes(quoted.minutes)},{" "}
            {formatMoney(quoted.price)}.
          </b>{" "}
          {estimate
            ? `As it looks now, what may go wrong counted in, it takes longer in ${lossWords(chanceOfOverrun(quoted.minutes, estimate.minutes))} jobs${
                settings
                  ? `, and loses money in ${lossWords(chanceOfLoss(quoted.price, estimate.minutes, settings))}`
                  : ""
              }.`
            : ""}
        </p>
      ) : null}
      <SheetForm sheet={sheet} wish="quote" name="quote" className={`${styles.quote} unprinted`}>
        {estimate
          ? (["p50", "p80", "p95"] as const).map((name) => (
              <input key={name} type="hidden" name={name} value={Math.round(estimate[name])} />
            ))
          : null}
        <TypedField
          name="quotedMinutes"
          label="Minutes promised"
          kind="number"
          value={String(quoted?.minutes ?? promise ?? "")}
        />
        <TypedField
          name="quotedPrice"
          label="Price promised"
          kind="number"
          value={quoted ? String(quoted.price) : proposed === undefined ? "" : formatMoney(proposed)}
        />
        <p className={fields.buttons}>
          <button type="submit" className={controls.plain}>
            {quoted ? "Change the quote" : "Keep as the quote given"}
          </button>
        </p>
      </SheetForm>
    </Section>
  );
}

/** A chance in hundred jobs; one in twenty is the least that is promised. */
const lossWords = (chance: number) =>
  chance < 0.055 ? "1 in 20, or fewer," : `${chanceIn100(chance)} in 100`;

const tailWords = ({ label, odds, shopMinutes }: RepairTail) =>
  `${label}: ${odds.charAt(0).toLowerCase()}${odds.slice(1)}.${
    shopMinutes > 0
      ? ` If it goes wrong, the shop is out ${formatMinutes(shopMinutes)}; the price allows for it.`
      : ""
  }`;
