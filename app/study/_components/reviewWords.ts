import { chanceIn100 } from "@/app/_components/chanceIn100";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { labelOf } from "@/app/_components/labelOf";
import type { NamedCause } from "@/lib/study/answer/brierScore";
import type { StudyAnswer, StudyReview } from "@/lib/study/review/reviewStudy";
import { lowerFirst } from "@/lib/text/lowerFirst";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** One line of how it went. */
export type ReviewLine = Readonly<{ term: string; words: string; tone: "good" | "bad" | "plain" }>;

/** How sure one has to be to count as sure, and as leaning. Chosen, as for the words of chances. */
const sureFrom = 0.8;
const leaningFrom = 0.5;
/** As good as half sure and right, the rest left open. */
const goodScore = 0.3;
/** Within this many points the two scores are alike. Chosen. */
const alikeScore = 0.1;

/** Says how a session went, line by line, in plain words; figures stand beside them. */
export function reviewWords(review: StudyReview, answer: StudyAnswer, vocabulary: Vocabulary): ReviewLine[] {
  const { named } = answer;
  return [
    causeLine(review, named, vocabulary),
    sureLine(review, named),
    minutesLine(review),
    orderLine(review),
    ...enoughLine(review, vocabulary),
    ...bestLine(review, vocabulary),
    repairLine(review, answer.repair, vocabulary),
    ...firstLine(review, answer, vocabulary),
  ];
}

function causeLine(
  { verdict }: StudyReview,
  named: readonly NamedCause[],
  { causes }: Vocabulary,
): ReviewLine {
  const said = [...named]
    .sort((a, b) => b.sure - a.sure)
    .map(({ cause, sure }) => `${lowerFirst(labelOf(causes, cause))} ${chanceIn100(sure)}`)
    .join(", ");
  const words = { right: "Right", "among them": "Among those you named, but not first", missed: "Missed" }[
    verdict
  ];
  return { term: "Cause", words: `${words}: you said ${said}.`, tone: verdict === "right" ? "good" : "bad" };
}

function sureLine({ verdict, brier, evidenceBrier }: StudyReview, named: readonly NamedCause[]): ReviewLine {
  const surest = Math.max(0, ...named.map(({ sure }) => sure));
  const how = surest >= sureFrom ? "Sure" : surest >= leaningFrom ? "Leaning" : "In doubt";
  const outcome = verdict === "right" ? "right" : "wrong";
  const beside =
    Math.abs(brier - evidenceBrier) <= alikeScore
      ? "About what your evidence was worth"
      : brier < evidenceBrier
        ? "Better than your evidence alone"
        : "Your evidence alone was worth more";
  return {
    term: "Confidence",
    words: `${how}, and ${outcome}. Score ${brier.toFixed(2)}: 0 is sure and right, 1 no idea, 2 sure and wrong. ${beside}, ${evidenceBrier.toFixed(2)}.`,
    tone: brier <= goodScore ? "good" : brier > evidenceBrier + alikeScore ? "bad" : "plain",
  };
}

function minutesLine({ verdict, own, recorded }: StudyReview): ReviewLine {
  const more = own.score.minutes - recorded.score.minutes;
  const words =
    Math.round(more) === 0
      ? "As many as the record."
      : `${formatMinutes(Math.abs(more))} ${more > 0 ? "more" : "fewer"} than the record.`;
  return { term: "Minutes", words, tone: more > 0 ? "bad" : verdict === "right" ? "good" : "plain" };
}

function orderLine({ tooSoon, own }: StudyReview): ReviewLine {
  if (own.checks.length === 0) return { term: "Order", words: "You asked for nothing.", tone: "bad" };
  return tooSoon.length === 0
    ? { term: "Order", words: "Nothing was opened before its time.", tone: "good" }
    : {
        term: "Order",
        words: `Opened up before a safer check that would have told about as much, ${tooSoon.length === 1 ? "once" : `${tooSoon.length} times`}.`,
        tone: "bad",
      };
}

function enoughLine({ enough, own }: StudyReview, { causes }: Vocabulary): ReviewLine[] {
  if (!enough) return [];
  const later = own.checks.slice(enough.after);
  const minutes = later.reduce((sum, check) => sum + check.minutes, 0);
  const stood = `After check ${enough.after} the evidence stood at ${chanceIn100(enough.probability)} in 100 for ${lowerFirst(labelOf(causes, enough.cause))}, and you went on for ${later.length} more, ${formatMinutes(minutes)}`;
  return [
    enough.overturned
      ? { term: "Going on", words: `${stood}. Rightly: another cause led in the end.`, tone: "good" }
      : { term: "Going on", words: `${stood}.`, tone: minutes > 0 ? "bad" : "plain" },
  ];
}

function bestLine({ own }: StudyReview, { checks }: Vocabulary): ReviewLine[] {
  const best = own.score.best === null ? undefined : own.checks[own.score.best];
  return best
    ? [
        {
          term: "Taught most",
          words: `${labelOf(checks, best.check)}, for its ${formatMinutes(best.minutes)}.`,
          tone: "plain",
        },
      ]
    : [];
}

const resultWords = {
  fixed: "It is what fixed this one.",
  better: "On this job it made it better.",
  "no-change": "On this job it was tried and changed nothing.",
  harm: "On this job it did harm.",
} as const;

function repairLine(
  { repair }: StudyReview,
  proposed: string | undefined,
  { repairs }: Vocabulary,
): ReviewLine {
  const cures = repair.recorded.filter(({ result }) => result === "fixed" || result === "better");
  const was = [...new Set(cures.map(({ repair: id }) => lowerFirst(labelOf(repairs, id))))].join(", then ");
  const record = was === "" ? "No repair helped on this job." : `On record: ${was}.`;
  if (proposed === undefined) return { term: "Repair", words: `You named none. ${record}`, tone: "plain" };
  const name = labelOf(repairs, proposed);
  const harms = repair.harms.length > 0 ? ` It did harm: ${repair.harms.map(lowerFirst).join("; ")}.` : "";
  if (repair.result !== null) {
    const tone = repair.result === "fixed" || repair.result === "better" ? "good" : "bad";
    return {
      term: "Repair",
      words: `${name}. ${resultWords[repair.result]}${harms}${tone === "bad" ? ` ${record}` : ""}`,
      tone: harms === "" ? tone : "bad",
    };
  }
  return repair.fitsCause
    ? { term: "Repair", words: `${name}. The handbook names it for this cause. ${record}`, tone: "good" }
    : { term: "Repair", words: `${name}. Not a repair for this cause. ${record}`, tone: "bad" };
}

function firstLine(
  { repair }: StudyReview,
  { repair: proposed, first }: Pick<StudyAnswer, "repair" | "first">,
  { checks }: Vocabulary,
): ReviewLine[] {
  if (proposed === undefined) return [];
  const wanted = repair.checkFirst.map(({ check }) => lowerFirst(labelOf(checks, check))).join(", ");
  if (wanted === "")
    return [{ term: "Check first", words: "The handbook asks for none before this repair.", tone: "plain" }];
  const own = first === undefined ? "You named none." : `${labelOf(checks, first)}.`;
  return [
    repair.rightFirst
      ? { term: "Check first", words: `${own} So says the handbook.`, tone: "good" }
      : { term: "Check first", words: `${own} The handbook wants: ${wanted}.`, tone: "bad" },
  ];
}
