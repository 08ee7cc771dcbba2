import { riskWord } from "@/app/_components/riskWord";
import type { Case } from "@/lib/casebook/caseFile";
import { parsePartRef } from "@/lib/casebook/partRef";
import { isCheckStep, isRepairStep } from "@/lib/casebook/step";
import { appliesTo } from "@/lib/vocabulary/appliesTo";
import { placesOf } from "@/lib/vocabulary/placesOf";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

type Option = Readonly<{ id: string; label: string }>;
type Group = Readonly<{ label: string; options: readonly Option[] }>;

const riskClasses = [0, 1, 2, 3, 4];

/** All checks and repairs that an instrument takes, to choose from; ids are `check ID` and `repair ID`. */
export function whatChoices(vocabulary: Vocabulary, instrument: string): readonly Group[] {
  const applies = ({ families }: Readonly<{ families: readonly string[] }>) =>
    appliesTo(vocabulary, families, instrument);
  const named =
    (kind: string) =>
    ({ id, label }: Option) => ({ id: `${kind} ${id}`, label });
  const checks = [...vocabulary.checks.values()].filter(applies);
  return [
    ...riskClasses.map((risk) => ({
      label: `Check: ${riskWord(risk)}`,
      options: checks.filter((check) => check.risk === risk).map(named("check")),
    })),
    { label: "Repair", options: [...vocabulary.repairs.values()].filter(applies).map(named("repair")) },
  ].filter(({ options }) => options.length > 0);
}

/** The parts of an instrument as a case file names them. */
export function partChoices(vocabulary: Vocabulary, instrument: string): readonly string[] {
  return [...vocabulary.parts.values()]
    .filter(({ families }) => appliesTo(vocabulary, families, instrument))
    .flatMap(({ id, numbered }) => {
      const places = numbered ? (placesOf(vocabulary, instrument, id) ?? 0) : 0;
      return places > 0
        ? [...Array.from({ length: places }, (_, at) => `${id} ${at + 1}`), `other ${id}`]
        : [id];
    });
}

/** The part that a check or repair will most likely be about: one of its kind with the number that was last in trouble. */
export function likelyPart({ path }: Case, parts: readonly string[], vocabulary: Vocabulary): string {
  const refs = path
    .filter((step) => isRepairStep(step) || isCheckStep(step))
    .flatMap((step) =>
      isCheckStep(step) && vocabulary.checks.get(step.check)?.normal === step.found ? [] : [step.part],
    )
    .flatMap((part) => (part === undefined ? [] : (parsePartRef(part) ?? [])))
    .filter(({ others }) => !others);
  const own = refs.findLast(({ part }) => parts.includes(part));
  if (own) return own.place === undefined ? own.part : `${own.part} ${own.place}`;
  const place = refs.findLast((ref) => ref.place !== undefined)?.place;
  const numbered = parts.find((id) => vocabulary.parts.get(id)?.numbered);
  return place !== undefined && numbered !== undefined ? `${numbered} ${place}` : "";
}
