import { formatDay } from "@/app/_components/formatDay";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { formatMoney } from "@/app/_components/formatMoney";
import { labelOf } from "@/app/_components/labelOf";
import { partWords } from "@/app/_components/partWords";
import { riskWord } from "@/app/_components/riskWord";
import { stepViews } from "@/app/casebook/[id]/_components/stepViews";
import type { Case } from "@/lib/casebook/caseFile";
import { isCheckStep, isRepairStep } from "@/lib/casebook/step";
import { listProofs } from "@/lib/consult/sheet/listProofs";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { instrumentWords } from "./instrumentWords";
import styles from "./Print.module.css";
import { proofWords } from "./proofWords";

type Props = Readonly<{ kase: Case; vocabulary: Vocabulary; shop: string | undefined }>;

/** The whole job for the file and for the hand at the bench: path, plan with what to check first, proof, cautions. */
export function JobSheet({ kase, vocabulary, shop }: Props) {
  const { causes, checks, repairs, cautions } = vocabulary;
  const steps = stepViews(kase, vocabulary);
  const proofs = listProofs(kase, vocabulary);
  const plan = kase.plan ?? [];
  const inHand = new Set([
    ...plan.map(({ repair }) => repair),
    ...kase.path.filter(isRepairStep).map(({ repair }) => repair),
  ]);
  const asked = [
    ...[...inHand].flatMap((id) => repairs.get(id)?.cautions ?? []),
    ...kase.path.filter(isCheckStep).flatMap(({ check }) => checks.get(check)?.cautions ?? []),
  ];
  const mind = [...new Set(asked)].flatMap((id) => cautions.get(id) ?? []);
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
      {mind.length > 0 ? (
        <section className={styles.mind}>
          <h2>Mind yourself</h2>
          {mind.map(({ id, label, hazard, guard, defersTo }) => (
            <p key={id}>
              <b>{label}.</b> {hazard} {guard} <i>First comes the word of: {defersTo}.</i>
            </p>
          ))}
        </section>
      ) : null}
      {plan.length > 0 ? (
        <>
          <h2>Plan</h2>
          <ul>
            {plan.map(({ repair, part, ticked = [], seen }, at) => {
              const entry = repairs.get(repair);
              return (
                <li key={`${at} ${repair}`}>
                  <b>
                    {[entry?.label ?? repair, partWords(vocabulary, part ?? null)].filter(Boolean).join(", ")}
                  </b>{" "}
                  ({entry ? riskWord(entry.risk).toLowerCase() : ""}
                  {seen ? "" : "; what goes before it was not looked at yet"})
                  <ul className={styles.boxes}>
                    {(entry?.checkFirst ?? []).map(({ check, why }) => (
                      <li key={check} data-ticked={ticked.includes(check) ? "" : undefined}>
                        {labelOf(checks, check)}: {why}
                      </li>
                    ))}
                  </ul>
                </li>
              );
            })}
          </ul>
        </>
      ) : null}
      <h2>Path</h2>
      <table className={styles.path}>
        <thead>
          <tr>
            <th scope="col">Step</th>
            <th scope="col">What</th>
            <th scope="col">Found</th>
            <th scope="col">Min</th>
          </tr>
        </thead>
        <tbody>
          {steps.map(({ title, found, note, minutes }, at) => (
            <tr key={`${at} ${title}`}>
              <td>{at + 1}</td>
              <td>{title}</td>
              <td>
                {found}
                {note ? `; ${note}` : ""}
              </td>
              <td>{minutes}</td>
            </tr>
          ))}
          <tr>
            <td />
            <td>
              <b>All</b>
            </td>
            <td />
            <td>
              <b>{kase.minutes ?? steps.reduce((sum, { minutes }) => sum + minutes, 0)}</b>
            </td>
          </tr>
        </tbody>
      </table>
      {kase.harms.length > 0 ? (
        <>
          <h2>Harm done</h2>
          <ul>
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
