import type { Case } from "../../casebook/caseFile";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Answer } from "../answer";

/** The repairs that a job is reckoned with: those on its plan; where there is none, the first of the likeliest cause. */
export function repairsInView(
  { plan = [] }: Pick<Case, "plan">,
  { causes }: Pick<Answer, "causes">,
  vocabulary: Pick<Vocabulary, "causes">,
): readonly string[] {
  if (plan.length > 0) return [...new Set(plan.map(({ repair }) => repair))];
  return (vocabulary.causes.get(causes[0]?.id ?? "")?.repairs ?? []).slice(0, 1);
}
