import type { Case } from "../../casebook/caseFile";
import type { Bench } from "../../consult/bench/bench";
import type { Finding } from "../../consult/finding";
import { keyFindings } from "../../consult/keyFindings";
import { type Posterior, weighCauses } from "../../diagnosis/posterior";
import { appliesTo } from "../../vocabulary/appliesTo";

/** Weighs the causes that an instrument can have by what was found on it: P(cause | findings), as `weighCauses` has it. */
export function studyBelief(
  { instrument }: Pick<Case, "instrument">,
  findings: readonly Finding[],
  { vocabulary, model }: Pick<Bench, "vocabulary" | "model">,
): Posterior {
  const outcomes = [...keyFindings(findings, vocabulary)].map(
    ([key, { outcome }]) => [key, outcome] as const,
  );
  return weighCauses(model, new Map(outcomes), {
    possible: (id) => appliesTo(vocabulary, vocabulary.causes.get(id)?.families ?? [], instrument),
  });
}
