import Link from "next/link";
import { labelOf } from "@/app/_components/labelOf";
import { Section } from "@/app/_components/Section";
import { proofWords } from "@/app/_print/proofWords";
import type { Case } from "@/lib/casebook/caseFile";
import { listProofs, type Proof } from "@/lib/consult/sheet/listProofs";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./ProofList.module.css";

const standings: Readonly<Record<Proof["standing"], string>> = {
  proven: "proven",
  contradicted: "found otherwise",
  open: "still to be shown",
  planned: "after it",
};

/** What the repairs done so far, and those planned, must be proven by, and what of it the path shows already. */
export function ProofList({ kase, vocabulary }: Readonly<{ kase: Case; vocabulary: Vocabulary }>) {
  const proofs = listProofs(kase, vocabulary);
  if (proofs.length === 0) return null;
  return (
    <Section title="Proof" aside="before it is closed as fixed">
      <ul className={styles.proofs}>
        {proofs.map((proof) => (
          <li key={proof.key} data-standing={proof.standing}>
            <span>
              {proofWords(proof, vocabulary)}
              <small>for {proof.repairs.map((repair) => repair.toLowerCase()).join("; ")}</small>
            </span>
            {proof.standing === "proven" ? (
              <b>{standings.proven}</b>
            ) : (
              <Link href={`?what=check+${proof.check}#log`} prefetch={false}>
                {standings[proof.standing]}
                <span className="heard">: log {labelOf(vocabulary.checks, proof.check)}</span>
              </Link>
            )}
          </li>
        ))}
      </ul>
    </Section>
  );
}
