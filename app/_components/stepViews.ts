import type { Case } from "@/lib/casebook/caseFile";
import {
  isBoreStep,
  isCheckStep,
  isPlugStep,
  isRepairStep,
  isSwapStep,
  type PlugStep,
  type Step,
} from "@/lib/casebook/step";
import type { Check } from "@/lib/vocabulary/check";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { labelOf } from "./labelOf";
import { partWords } from "./partWords";

/** One step of the path in words. */
export type StepView = Readonly<{
  title: string;
  /** The handbook page that it leads to. */
  href: string | null;
  found: string;
  kind: "check" | "repair" | "proof";
  minutes: number;
  riskClass: number | null;
  note: string | null;
}>;

const resultWords = {
  fixed: "fixed it",
  better: "made it better",
  "no-change": "changed nothing",
  harm: "did harm",
} as const;

/** A case's path in words; what is checked after the repair that fixed it is proof. */
export function stepViews({ path }: Pick<Case, "path">, vocabulary: Vocabulary): StepView[] {
  const cured = path.findIndex((step) => isRepairStep(step) && step.result === "fixed");
  return path.map((step, at) => {
    const said = sayStep(step, vocabulary);
    const kind = isRepairStep(step) ? "repair" : cured >= 0 && at > cured ? "proof" : "check";
    return { ...said, kind, minutes: step.minutes, note: step.note || null };
  });
}

type Said = Pick<StepView, "title" | "href" | "found" | "riskClass">;

function sayStep(step: Step, vocabulary: Vocabulary): Said {
  const { checks, repairs } = vocabulary;
  const on = (label: string, part: string | undefined) =>
    [label, partWords(vocabulary, part ?? null)].filter(Boolean).join(", ");
  if (isCheckStep(step)) {
    const check = checks.get(step.check);
    return said(on(check?.label ?? step.check, step.part), check, [
      outcomeOf(check, step.found),
      ...strokeWords(step, vocabulary),
    ]);
  }
  if (isRepairStep(step)) {
    return {
      title: on(labelOf(repairs, step.repair), step.part),
      href: `/handbook/repairs/${step.repair}`,
      found: resultWords[step.result],
      riskClass: repairs.get(step.repair)?.risk ?? null,
    };
  }
  if (isSwapStep(step)) {
    const [guest, host] = step.swap.map((part) => partWords(vocabulary, part));
    const words = [step.found, ...strokeWords(step, vocabulary)];
    return said(`Tried ${guest} in ${host}`, reading(vocabulary, "swap"), words);
  }
  if (isPlugStep(step)) {
    const title = `Plugs in ${partWords(vocabulary, step.plugs.part)}`;
    return said(
      title,
      reading(vocabulary, step.piston ? "clearance" : "reduction"),
      plugWords(step, vocabulary),
    );
  }
  if (isBoreStep(step)) {
    const { part, depth, readings } = step.bore;
    const title = `Measured the bore of ${partWords(vocabulary, part)}`;
    const diameters = readings.map(({ angle, diameter }) => `${diameter} at ${angle}°`);
    return said(title, reading(vocabulary, "ovality"), [...(depth ? [`${depth} down`] : []), ...diameters]);
  }
  return { title: "A step", href: null, found: "", riskClass: null };
}

const said = (title: string, check: Check | undefined, words: readonly string[]): Said => ({
  title,
  href: check ? `/handbook/checks/${check.id}` : null,
  found: words.map((word, at) => (at === 0 ? word : lower(word))).join(", "),
  riskClass: check?.risk ?? null,
});

const lower = (words: string) => words.charAt(0).toLowerCase() + words.slice(1);

const outcomeOf = (check: Check | undefined, id: string) =>
  check?.outcomes.find((outcome) => outcome.id === id)?.label ?? id;

const reading = ({ checks }: Vocabulary, reads: Check["reads"]) =>
  [...checks.values()].find((check) => check.reads === reads);

function strokeWords(
  { where, way }: Readonly<{ where?: string | undefined; way?: string | undefined }>,
  vocabulary: Vocabulary,
): string[] {
  return [
    ...(where === undefined ? [] : [outcomeOf(reading(vocabulary, "place"), where)]),
    ...(way === undefined ? [] : [outcomeOf(reading(vocabulary, "way"), way)]),
  ];
}

function plugWords({ plugs, reference, piston }: PlugStep, vocabulary: Vocabulary): string[] {
  const tried = ({ passes, stops }: PlugStep["plugs"]) =>
    [
      ...(passes.length > 0 ? [`${passes.join(", ")} passes`] : []),
      ...(stops.length > 0 ? [`${stops.join(", ")} stops`] : []),
    ].join(", ");
  return [
    ...(plugs.depth ? [`${plugs.depth} down`] : []),
    tried(plugs),
    ...(reference ? [`${partWords(vocabulary, reference.part)} beside it: ${tried(reference)}`] : []),
    ...(piston
      ? [
          `${partWords(vocabulary, piston.part)} ${piston.diameter}${piston.plusMinus ? ` ± ${piston.plusMinus}` : ""}`,
        ]
      : []),
  ].filter((words) => words !== "");
}
