import type { Case } from "../../casebook/caseFile";
import { isRepairStep } from "../../casebook/step";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Answer } from "../answer";

/**
 * The repairs that a job is still reckoned with: those on its plan; where there is none, the first of the likeliest cause.
 * One that is done is done: what it did is known.
 */
export function repairsInView(
  { plan = [], path }: Pick<Case, "plan" | "path">,
  { causes }: Pick<Answer, "causes">,
  vocabulary: Pick<Vocabulary, "causes">,
): readonly string[] {
  const done = new Set(path.filter(isRepairStep).map(({ repair }) => repair));
  const first = (vocabulary.causes.get(causes[0]?.id ?? "")?.repairs ?? []).slice(0, 1);
  const chosen = plan.length > 0 ? plan.map(({ repair }) => repair) : first;
  return [...new Set(chosen)].filter((repair) => !done.has(repair));
}
