import { type InstrumentGroup, instrumentOptions } from "@/app/_bench/instrumentOptions";
import { groupWord } from "@/app/_components/groupWord";
import { riskWord } from "@/app/_components/riskWord";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

export type Choice = Readonly<{ id: string; label: string }>;
export type ChoiceGroup = Readonly<{ label: string; options: readonly Choice[] }>;

/** Everything that the form lets one choose from, in words. */
export type Choices = Readonly<{
  instruments: readonly InstrumentGroup[];
  /** Ids are `check ID` and `repair ID`. */
  whats: readonly ChoiceGroup[];
  /** Check id -> its outcomes. */
  outcomes: Readonly<Record<string, readonly Choice[]>>;
  places: readonly Choice[];
  causes: readonly ChoiceGroup[];
  /** Parts as a case file names them, numbered ones without their number. */
  parts: readonly string[];
}>;

const riskClasses = [0, 1, 2, 3, 4];

/** Lays the vocabulary out as choices for the form. */
export function choicesOf(vocabulary: Vocabulary): Choices {
  const { checks, repairs, causes, parts } = vocabulary;
  const all = [...checks.values()];
  const groups = [...new Set([...causes.values()].map(({ group }) => group))];
  return {
    instruments: instrumentOptions(vocabulary),
    whats: [
      ...riskClasses.map((risk) => ({
        label: `Check: ${riskWord(risk)}`,
        options: all
          .filter((check) => check.risk === risk)
          .map(({ id, label }) => ({ id: `check ${id}`, label })),
      })),
      {
        label: "Repair",
        options: [...repairs.values()].map(({ id, label }) => ({ id: `repair ${id}`, label })),
      },
    ].filter(({ options }) => options.length > 0),
    outcomes: Object.fromEntries(
      all.map(({ id, outcomes }) => [
        id,
        outcomes.map((outcome) => ({ id: outcome.id, label: outcome.label })),
      ]),
    ),
    places: (all.find(({ reads }) => reads === "place")?.outcomes ?? []).map(({ id, label }) => ({
      id,
      label,
    })),
    causes: groups.map((group) => ({
      label: groupWord(group),
      options: [...causes.values()]
        .filter((cause) => cause.group === group)
        .map(({ id, label }) => ({ id, label })),
    })),
    parts: [...parts.values()].flatMap(({ id, numbered }) =>
      numbered ? [`${id} 1`, `${id} 2`, `${id} 3`, `other ${id}`] : [id],
    ),
  };
}
