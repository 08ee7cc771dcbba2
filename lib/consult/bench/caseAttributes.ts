import type { Case } from "../../casebook/caseFile";
import type { CauseModel } from "../../diagnosis/causeModel";
import { informationGainBits, uncertaintyBits } from "../../diagnosis/informationGain";
import { weighCauses } from "../../diagnosis/posterior";
import type { Attribute } from "../../similarity/attribute";
import type { Row } from "../../similarity/row";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { keyFindings } from "../keyFindings";
import { caseFindings } from "../record/caseFindings";

export const attributeNames = { instrument: "instrument", findings: "findings", words: "words" } as const;

/** Weight of the instrument and of the words beside a finding that tells one bit. Chosen: see `evaluate --casebook`. */
const weights = { instrument: 0.5, words: 1, leastFinding: 0.15 } as const;

/**
 * What two cases are compared by: the instrument, every finding, and the words. A finding weighs as much as the handbook
 * expects it to tell about the cause, in bits.
 *
 * @param model the handbook's model, before any case
 */
export function caseAttributes(vocabulary: Vocabulary, model: CauseModel): Attribute[] {
  const belief = weighCauses(model, new Map());
  const nowBits = uncertaintyBits(belief);
  const ordered = new Map([...vocabulary.checks.values()].map((check) => [check.id, check.ordered]));
  return [
    {
      kind: "taxonomy",
      name: attributeNames.instrument,
      weight: weights.instrument,
      taxonomy: vocabulary.instrumentTree,
    },
    {
      kind: "findings",
      name: attributeNames.findings,
      keys: model.kinds.map(({ key, outcomes }) => ({
        key,
        outcomes,
        weight: weights.leastFinding + informationGainBits(model, belief, key, nowBits),
        ordered: ordered.get(key.split("@")[0] ?? key) === true,
      })),
    },
    { kind: "text", name: attributeNames.words, weight: weights.words },
  ];
}

/** A case with its outcomes as a row of the case table. */
export function caseRow(kase: Case, outcomes: Readonly<Record<string, string>>): Row {
  return {
    id: kase.id,
    date: kase.received,
    values: { [attributeNames.instrument]: kase.instrument },
    findings: { [attributeNames.findings]: outcomes },
  };
}

/** A case's findings, key to outcome. */
export function caseOutcomes(kase: Case, vocabulary: Vocabulary): Record<string, string> {
  const keyed = keyFindings(caseFindings(kase, vocabulary), vocabulary);
  return Object.fromEntries([...keyed].map(([key, { outcome }]) => [key, outcome]));
}
