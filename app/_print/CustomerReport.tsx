import { formatDay } from "@/app/_components/formatDay";
import { formatMoney } from "@/app/_components/formatMoney";
import { labelOf } from "@/app/_components/labelOf";
import { partWords } from "@/app/_components/partWords";
import type { Case } from "@/lib/casebook/caseFile";
import { isRepairStep } from "@/lib/casebook/step";
import { listProofs } from "@/lib/consult/sheet/listProofs";
import { upperFirst } from "@/lib/text/upperFirst";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { instrumentWords } from "./instrumentWords";
import styles from "./Print.module.css";
import { proofWords } from "./proofWords";

type Props = Readonly<{
  kase: Case;
  vocabulary: Vocabulary;
  shop: string | undefined;
  /** What it looks like while nothing is settled yet; an id of a cause. */
  suspected: string | undefined;
}>;

const resultWords = {
  fixed: "and that mended it",
  better: "which made it better",
  "no-change": "which did not help",
  harm: "which did harm; see below",
} as const;
const endings = {
  fixed: "It works again.",
  improved: "It works better than it came in, though not as it should.",
  "not-fixed": "We could not mend it.",
  declined: "It was not repaired.",
} as const;

/** The risk class of what cannot be undone. */
const noReturn = 4;

/** What a customer is told of a job, in plain words, on one page: what came in, what it was, what was done, what it costs. */
export function CustomerReport({ kase, vocabulary, shop, suspected }: Props) {
  const { checks, causes, repairs } = vocabulary;
  const on = (label: string, part: string | undefined) =>
    [label, partWords(vocabulary, part ?? null)].filter(Boolean).join(", ");
  const named = kase.causes.filter(({ role }) => role !== "brought-on");
  const done = kase.path.filter(isRepairStep);
  const doneIds = new Set(done.map(({ repair }) => repair));
  const meant = kase.status === "open" ? (kase.plan ?? []).filter(({ repair }) => !doneIds.has(repair)) : [];
  const proven = listProofs({ path: kase.path }, vocabulary).filter(({ standing }) => standing === "proven");
  return (
    <article className={styles.page}>
      <header className={styles.head}>
        {shop ? <p className={styles.shop}>{shop}</p> : null}
        <h1>Your {instrumentWords(kase, vocabulary)}</h1>
        <p>
          Job {kase.id}, taken in {formatDay(kase.received)}
          {kase.closed ? `, finished ${formatDay(kase.closed)}` : ""}
        </p>
      </header>
      <h2>What you told us</h2>
      <p>{kase.complaint}</p>
      {kase.arrival.length > 0 ? (
        <>
          <h2>How it came to us</h2>
          <p>{sentence(kase.arrival.join("; "))}</p>
        </>
      ) : null}
      <h2>{named.length > 0 ? "What it was" : "What we think it is"}</h2>
      {named.map(({ cause, part, role, note }) => (
        <p key={`${cause} ${part}`}>
          {role === "contributing" ? "It was helped along by this: " : null}
          <b>{on(labelOf(causes, cause), part)}.</b> {causes.get(cause)?.comesAbout}{" "}
          {note ? sentence(note) : ""}
        </p>
      ))}
      {named.length === 0 ? (
        <p>
          {suspected ? (
            <>
              Most likely <b>{labelOf(causes, suspected).toLowerCase()}</b>, though it is not proven yet.{" "}
              {causes.get(suspected)?.comesAbout}
            </>
          ) : (
            "We do not know yet."
          )}
        </p>
      ) : null}
      <h2>{kase.status === "open" ? "What we did so far" : "What we did"}</h2>
      {done.length === 0 ? <p>Nothing was done to it but looking and checking.</p> : null}
      <ul className={styles.list}>
        {done.map(({ repair, part, result }, at) => (
          <li key={`${at} ${repair}`}>
            {on(labelOf(repairs, repair), part)}, {resultWords[result]}
          </li>
        ))}
      </ul>
      {meant.length > 0 ? (
        <>
          <h2>What we mean to do</h2>
          <ul className={styles.list}>
            {meant.map(({ repair, part }, at) => (
              <li key={`${at} ${repair}`}>
                {on(labelOf(repairs, repair), part)}
                {(repairs.get(repair)?.risk ?? 0) >= noReturn
                  ? "; this cannot be undone once it is begun"
                  : ""}
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {kase.outcome ? <p>{endings[kase.outcome]}</p> : null}
      {proven.length > 0 ? (
        <>
          <h2>How we know that it works</h2>
          <ul className={styles.list}>
            {proven.map((proof) => (
              <li key={proof.key}>{proofWords(proof, { checks, parts: vocabulary.parts })}</li>
            ))}
          </ul>
        </>
      ) : null}
      {kase.unproven ? <p>It was given back without our usual proof: {sentence(kase.unproven)}</p> : null}
      {kase.harms.length > 0 ? (
        <>
          <h2>What went wrong on our bench</h2>
          {kase.harms.map(({ repair, what, how, paidBy }) => (
            <p key={`${repair} ${what}`}>
              {labelOf(repairs, repair)}: {sentence(what)} {how ? sentence(how) : ""}{" "}
              {paidBy === "shop"
                ? "Making it good is at our own cost."
                : "It was agreed that making it good is charged."}
            </p>
          ))}
        </>
      ) : null}
      <h2>What it costs</h2>
      <p>
        {kase.charge !== undefined ? <b>Charged: {formatMoney(kase.charge)}. </b> : null}
        {kase.quoted
          ? `Quoted: ${formatMoney(kase.quoted.price)}${kase.quoted.on ? ` on ${formatDay(kase.quoted.on)}` : ""}.`
          : kase.charge === undefined
            ? "No price has been given yet."
            : ""}
      </p>
    </article>
  );
}

/** Words as a sentence: a capital at its head and a stop at its end. */
function sentence(words: string): string {
  const plain = words.trim();
  return `${upperFirst(plain)}${/[.!?]$/.test(plain) ? "" : "."}`;
}
