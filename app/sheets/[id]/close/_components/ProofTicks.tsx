import { Section } from "@/app/_components/Section";
import { proofWords } from "@/app/_print/proofWords";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import { listProofs } from "@/lib/consult/sheet/listProofs";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import styles from "./ProofTicks.module.css";

/** What proves the repairs, to be ticked off where the path does not show it yet; or why it is closed without. */
export function ProofTicks({ kase, vocabulary }: Readonly<{ kase: Case; vocabulary: Vocabulary }>) {
  const proofs = listProofs({ path: kase.path }, vocabulary);
  return (
    <Section title="Proof" aside="no job is fixed before it is shown to be">
      {proofs.length === 0 ? <p className="small soft">No repair in the path asks for one.</p> : null}
      <ul>
        {proofs.map((proof) => (
          <li key={proof.key} className={styles.proof} data-standing={proof.standing}>
            <label>
              <input
                type="checkbox"
                name="proof"
                value={proof.key}
                defaultChecked={proof.standing === "proven"}
                disabled={proof.standing === "proven"}
              />
              <span>
                {proofWords(proof, vocabulary)}
                <small>
                  for {proof.repairs.map((repair) => repair.toLowerCase()).join("; ")}
                  {proof.standing === "proven" ? "; the path shows it" : ""}
                  {proof.standing === "contradicted" ? "; it was found otherwise after the repair" : ""}
                </small>
              </span>
            </label>
          </li>
        ))}
      </ul>
      <TypedField
        name="unproven"
        label="If it is closed as fixed without all of these: why"
        value={kase.unproven ?? ""}
      />
    </Section>
  );
}
