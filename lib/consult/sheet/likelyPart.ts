import type { Case } from "../../casebook/caseFile";
import { formatPartRef, parsePartRef } from "../../casebook/partRef";
import { isCheckStep, isRepairStep } from "../../casebook/step";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/**
 * The part that a check or repair will most likely be about: one of its kind with the number that was last in trouble.
 *
 * @param parts ids of the parts that it can be about
 * @returns as a case file names it; empty where nothing shows it
 */
export function likelyPart(
  { path }: Pick<Case, "path">,
  parts: readonly string[],
  vocabulary: Vocabulary,
): string {
  const refs = path
    .filter((step) => isRepairStep(step) || isCheckStep(step))
    .flatMap((step) =>
      isCheckStep(step) && vocabulary.checks.get(step.check)?.normal === step.found ? [] : [step.part],
    )
    .flatMap((part) => (part === undefined ? [] : (parsePartRef(part) ?? [])))
    .filter(({ others }) => !others);
  const own = refs.findLast(({ part }) => parts.includes(part));
  if (own) return formatPartRef(own);
  const place = refs.findLast((ref) => ref.place !== undefined)?.place;
  const numbered = parts.find((id) => vocabulary.parts.get(id)?.numbered);
  return place !== undefined && numbered !== undefined
    ? formatPartRef({ part: numbered, place, others: false })
    : "";
}
