import type { Case } from "@/lib/casebook/caseFile";
import {
  isBoreStep,
  isCheckStep,
  isLeakStep,
  isPlugStep,
  isRepairStep,
  isSwapStep,
  type LeakStep,
  type PlugStep,
  type Step,
} from "@/lib/casebook/step";
import { leakWords } from "@/lib/gauging/fits/leakWords";
import { readLeak } from "@/lib/gauging/fits/readLeak";
import type { LengthWords } from "@/lib/gauging/lengths/lengthWords";
import { readSize, type SizeKind } from "@/lib/gauging/lengths/readSize";
import { lowerFirst } from "@/lib/text/lowerFirst";
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

/**
 * A case's path in words; what is checked after the repair that fixed it is proof.
 *
 * @param lengths the units that readings are shown in; one that cannot be read stays as it was written
 */
export function stepViews(
  { path }: Pick<Case, "path">,
  vocabulary: Vocabulary,
  lengths: LengthWords,
): StepView[] {
  const cured = path.findIndex((step) => isRepairStep(step) && step.result === "fixed");
  return path.map((step, at) => {
    const said = sayStep(step, vocabulary, lengths);
    const kind = isRepairStep(step) ? "repair" : cured >= 0 && at > cured ? "proof" : "check";
    return { ...said, kind, minutes: step.minutes, note: step.note || null };
  });
}

type Said = Pick<StepView, "title" | "href" | "found" | "riskClass">;

function sayStep(step: Step, vocabulary: Vocabulary, lengths: LengthWords): Said {
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
      plugWords(step, vocabulary, lengths),
    );
  }
  if (isBoreStep(step)) {
    const { part, depth, readings } = step.bore;
    const title = `Measured the bore of ${partWords(vocabulary, part)}`;
    const diameters = readings.map(
      ({ angle, diameter }) => `${shown(diameter, "diameter", lengths)} at ${angle}°`,
    );
    return said(title, reading(vocabulary, "ovality"), [
      ...(depth ? [`${shown(depth, "depth", lengths)} down`] : []),
      ...diameters,
    ]);
  }
  if (isLeakStep(step)) return said("Read the leak", undefined, leakSaid(step));
  return { title: "A step", href: null, found: "", riskClass: null };
}

const said = (title: string, check: Check | undefined, words: readonly string[]): Said => ({
  title,
  href: check ? `/handbook/checks/${check.id}` : null,
  found: words.map((word, at) => (at === 0 ? word : lowerFirst(word))).join(", "),
  riskClass: check?.risk ?? null,
});

const outcomeOf = (check: Check | undefined, id: string) =>
  check?.outcomes.find((outcome) => outcome.id === id)?.label ?? id;

const reading = ({ checks }: Vocabulary, reads: Check["reads"]) =>
  [...checks.values()].find((check) => check.reads === reads);

/** A length of a reading in the units that are shown. */
function shown(text: string, kind: SizeKind, lengths: LengthWords): string {
  const read = readSize(text, kind);
  if (read.kind !== "length") return text;
  if (kind === "depth") return lengths.depth(read.mm);
  return kind === "uncertainty" ? lengths.difference(read.mm) : lengths.size(read.mm);
}

function strokeWords(
  { where, way }: Readonly<{ where?: string | undefined; way?: string | undefined }>,
  vocabulary: Vocabulary,
): string[] {
  return [
    ...(where === undefined ? [] : [outcomeOf(reading(vocabulary, "place"), where)]),
    ...(way === undefined ? [] : [outcomeOf(reading(vocabulary, "way"), way)]),
  ];
}

/** What was read, and what it comes to. */
function leakSaid({ leak }: LeakStep): string[] {
  const { volume, first, second, after, flow, at } = leak;
  const found = readLeak(leak);
  return [
    flow ? `${flow} at ${at}` : `${volume} fell from ${first} to ${second} in ${after}`,
    ...(found.kind === "leak"
      ? leakWords(found)
          .slice(0, -1)
          .map((words) => words.replace(/\.$/, ""))
      : []),
  ];
}

function plugWords(
  { plugs, reference, piston }: PlugStep,
  vocabulary: Vocabulary,
  lengths: LengthWords,
): string[] {
  const sizes = (texts: readonly string[]) =>
    texts.map((text) => shown(text, "diameter", lengths)).join(", ");
  const tried = ({ passes, stops }: PlugStep["plugs"]) =>
    [
      ...(passes.length > 0 ? [`${sizes(passes)} passes`] : []),
      ...(stops.length > 0 ? [`${sizes(stops)} stops`] : []),
    ].join(", ");
  return [
    ...(plugs.depth ? [`${shown(plugs.depth, "depth", lengths)} down`] : []),
    tried(plugs),
    ...(reference ? [`${partWords(vocabulary, reference.part)} beside it: ${tried(reference)}`] : []),
    ...(piston
      ? [
          `${partWords(vocabulary, piston.part)} ${shown(piston.diameter, "diameter", lengths)}${piston.plusMinus ? ` ± ${shown(piston.plusMinus, "uncertainty", lengths)}` : ""}`,
        ]
      : []),
  ].filter((words) => words !== "");
}
