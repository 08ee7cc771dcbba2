import { riskWord } from "@/app/_components/riskWord";
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

/** As many causes as are likely enough to plan for. */
const likelyCauses = 4;

/** Repairs to plan: those of the likeliest causes, each under its cause (id `REPAIR CAUSE`), then all others of the instrument. */
export function repairChoices(
  causes: readonly Option[],
  vocabulary: Vocabulary,
  instrument: string,
): readonly Group[] {
  const likely = causes.slice(0, likelyCauses).map(({ id, label }) => ({
    label: `For ${label.toLowerCase()}`,
    options: (vocabulary.causes.get(id)?.repairs ?? []).flatMap((one) => {
      const repair = vocabulary.repairs.get(one);
      return repair ? [{ id: `${one} ${id}`, label: repair.label }] : [];
    }),
  }));
  const others = [...vocabulary.repairs.values()].filter(({ families }) =>
    appliesTo(vocabulary, families, instrument),
  );
  return [...likely, { label: "Any other", options: others.map(({ id, label }) => ({ id, label })) }].filter(
    ({ options }) => options.length > 0,
  );
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
