import { formatDay } from "@/app/_components/formatDay";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { formatMoney } from "@/app/_components/formatMoney";
import { labelOf } from "@/app/_components/labelOf";
import { Photos } from "@/app/_components/Photos";
import { partWords } from "@/app/_components/partWords";
import type { Case } from "@/lib/casebook/caseFile";
import { listProofs } from "@/lib/consult/sheet/listProofs";
import type { LengthWords } from "@/lib/gauging/lengths/lengthWords";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { instrumentWords } from "./instrumentWords";
import { MindYourself } from "./MindYourself";
import { PathTable } from "./PathTable";
import { PlanBoxes } from "./PlanBoxes";
import styles from "./Print.module.css";
import { proofWords } from "./proofWords";

type Props = Readonly<{ kase: Case; vocabulary: Vocabulary; shop: string | undefined; lengths: LengthWords }>;

/** The whole job for the file and for the hand at the bench: path, plan with what to check first, proof, cautions. */
export function JobSheet({ kase, vocabulary, shop, lengths }: Props) {
  const { causes, repairs } = vocabulary;
  // What was planned and not done is no longer asked for once the job is closed.
  const proofs = listProofs(kase.status === "open" ? kase : { path: kase.path }, vocabulary);
  return (
    <article className={styles.page} data-wide="">
      <header className={styles.head}>
        {shop ? <p className={styles.shop}>{shop}</p> : null}
        <h1>
          Job {kase.id}: {kase.title}
        </h1>
        <p>
          {instrumentWords(kase, vocabulary)}; taken in {formatDay(kase.received)}
          {kase.closed ? `, closed ${formatDay(kase.closed)}` : ""}
          {kase.quoted
            ? `; promised ${formatMinutes(kase.quoted.minutes)}, ${formatMoney(kase.quoted.price)}`
            : ""}
        </p>
      </header>
      <p>
        <b>Came in with</b> {kase.complaint}
      </p>
      <p>
        <b>On arrival</b> {kase.arrival.length > 0 ? kase.arrival.join("; ") : "nothing noted"}
      </p>
      {kase.photos ? <Photos id={kase.id} photos={kase.photos} as="paper" /> : null}
      {kase.causes.length > 0 ? (
        <p>
          <b>Causes</b>{" "}
          {kase.causes
            .map(({ cause, part }) =>
              [labelOf(causes, cause), partWords(vocabulary, part ?? null)].filter(Boolean).join(", "),
            )
            .join("; ")}
        </p>
      ) : null}
      <MindYourself kase={kase} vocabulary={vocabulary} />
      <PlanBoxes kase={kase} vocabulary={vocabulary} />
      <PathTable kase={kase} vocabulary={vocabulary} lengths={lengths} />
      {kase.harms.length > 0 ? (
        <>
          <h2>Harm done</h2>
          <ul className={styles.list}>
            {kase.harms.map(({ repair, what, how, step, minutes, paidBy }) => (
              <li key={`${repair} ${what}`}>
                {labelOf(repairs, repair)}
                {step ? `, step ${step}` : ""}: {what}
                {how ? `; ${how}` : ""}; {formatMinutes(minutes)} to make good, paid by the {paidBy}
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {proofs.length > 0 ? (
        <>
          <h2>Proof</h2>
          <ul className={styles.boxes}>
            {proofs.map((proof) => (
              <li key={proof.key} data-ticked={proof.standing === "proven" ? "" : undefined}>
                {proofWords(proof, vocabulary)}
                {proof.standing === "contradicted" ? " (found otherwise)" : ""}
              </li>
            ))}
          </ul>
        </>
      ) : null}
      {kase.unproven ? <p>Closed without proof: {kase.unproven}</p> : null}
      {kase.lessons.length > 0 ? (
        <>
          <h2>Lesson</h2>
          {kase.lessons.map((lesson) => (
            <p key={lesson}>{lesson}</p>
          ))}
        </>
      ) : null}
    </article>
  );
}
