import type { Case } from "../../casebook/caseFile";
import type { LearnerSession } from "../../casebook/learners/learnerFile";
import type { NamedCause } from "../answer/brierScore";
import type { StudyReview } from "../review/reviewStudy";

/** Digits that are kept of what is no whole number. */
const rounded = (value: number) => Number(value.toFixed(4));

/** What is kept of a session once it has been answered. */
export function sessionOf(
  kase: Pick<Case, "id">,
  review: StudyReview,
  named: readonly NamedCause[],
  { day, lesson }: Readonly<{ day: string; lesson: string | null }>,
): LearnerSession {
  const { own, recorded } = review;
  return {
    case: kase.id,
    day,
    said: named.map(({ cause, sure }) => ({ cause, sure: rounded(sure) })),
    verdict: review.verdict,
    score: rounded(review.brier),
    checks: own.checks.length,
    minutes: rounded(own.score.minutes),
    atStake: rounded(own.score.riskMinutes),
    recordMinutes: rounded(recorded.score.minutes),
    recordAtStake: rounded(recorded.score.riskMinutes),
    tooSoon: review.tooSoon.length,
    ...(lesson === null ? {} : { lesson }),
  };
}
