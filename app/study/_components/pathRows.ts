import { labelOf } from "@/app/_components/labelOf";
import type { StudyReview } from "@/lib/study/reviewStudy";
import type { WalkedCheck } from "@/lib/study/walkStudy";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** A check of one way, and how it stands to the other ways, in a word. */
export type PathRow = Readonly<{
  check: string;
  label: string;
  minutes: number;
  riskClass: number;
  standing: string;
  tone: "good" | "bad" | "plain";
  note: string | null;
}>;

type Standing = Pick<PathRow, "standing" | "tone" | "note">;

/** The apprentice's own way: too soon, on record too, or not done on that job. */
export function ownRows({ own, recorded, tooSoon }: StudyReview, vocabulary: Vocabulary): PathRow[] {
  return own.checks.map((walked, at) => {
    const soon = tooSoon.find((one) => one.at === at);
    const best = own.score.best === at ? "Taught the most a minute" : null;
    if (soon) {
      const safer = `${labelOf(vocabulary.checks, soon.safer)} was open, safer, and likely to tell as much`;
      return rowOf(walked, vocabulary, {
        standing: "too soon",
        tone: "bad",
        note: best ? `${best}. ${safer}` : safer,
      });
    }
    if (!walked.done) return rowOf(walked, vocabulary, { standing: "not there", tone: "plain", note: null });
    return rowOf(walked, vocabulary, {
      standing: has(recorded.checks, walked) ? "same" : "noted",
      tone: "good",
      note: best,
    });
  });
}

/**
 * The recorded way, or the bench's: what the apprentice asked for too, and what was missed.
 *
 * @param found what was found by a check, in words
 */
export const otherRows = (
  checks: readonly WalkedCheck[],
  { own }: StudyReview,
  vocabulary: Vocabulary,
  found: ReadonlyMap<string, string>,
): PathRow[] =>
  checks.map((walked) =>
    rowOf(
      walked,
      vocabulary,
      has(own.checks, walked)
        ? { standing: "same", tone: "good", note: null }
        : { standing: "missed", tone: "bad", note: found.get(walked.check) ?? null },
    ),
  );

const has = (checks: readonly WalkedCheck[], { check }: WalkedCheck) =>
  checks.some((one) => one.check === check);

const rowOf = (
  { check, minutes, riskClass }: WalkedCheck,
  vocabulary: Vocabulary,
  standing: Standing,
): PathRow => ({ check, label: labelOf(vocabulary.checks, check), minutes, riskClass, ...standing });
