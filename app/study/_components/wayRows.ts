import { labelOf } from "@/app/_components/labelOf";
import type { StudyReview } from "@/lib/study/review/reviewStudy";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** A check of any of the three ways: its place in each, from 1, and a word on how it was used. */
export type WayRow = Readonly<{
  check: string;
  label: string;
  minutes: number;
  riskClass: number;
  /** Null where that way does without it. */
  you: number | null;
  record: number | null;
  bench: number | null;
  notes: readonly Readonly<{ words: string; tone: "good" | "bad" | "plain" }>[];
}>;

/**
 * Lays the apprentice's way, the recorded one and the bench's beside one another, a row a check: the apprentice's own in
 * their order, then what the record and then what the bench has beyond them.
 *
 * @param found what was found by a check, in words
 */
export function wayRows(
  review: StudyReview,
  vocabulary: Vocabulary,
  found: ReadonlyMap<string, string>,
): WayRow[] {
  const { own, recorded, planned } = review;
  const all = new Map([...own.checks, ...recorded.checks, ...planned.checks].map((one) => [one.check, one]));
  const placeIn = (way: StudyReview["own"], id: string) => {
    const at = way.checks.findIndex(({ check }) => check === id);
    return at < 0 ? null : at + 1;
  };
  // A check that stands in several ways is met first where it is first said: a map keeps that order.
  return [...all.values()].map(({ check, minutes, riskClass }) => {
    const you = placeIn(own, check);
    return {
      check,
      label: labelOf(vocabulary.checks, check),
      minutes,
      riskClass,
      you,
      record: placeIn(recorded, check),
      bench: placeIn(planned, check),
      notes: you === null ? missedNotes(found.get(check)) : ownNotes(review, you - 1, vocabulary),
    };
  });
}

const missedNotes = (found: string | undefined): WayRow["notes"] =>
  found ? [{ words: `You would have found: ${found}`, tone: "plain" }] : [];

function ownNotes({ own, tooSoon }: StudyReview, at: number, { checks }: Vocabulary): WayRow["notes"] {
  const soon = tooSoon.find((one) => one.at === at);
  return [
    ...(own.score.best === at ? [{ words: "Taught the most for its minutes", tone: "good" } as const] : []),
    ...(own.checks[at]?.done === false ? [{ words: "Not done on this job", tone: "plain" } as const] : []),
    ...(soon
      ? [
          {
            words: `Too soon: ${labelOf(checks, soon.safer)} was open, safer, and likely to tell as much`,
            tone: "bad",
          } as const,
        ]
      : []),
  ];
}
