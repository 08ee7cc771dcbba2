import { type Card, createEmptyCard, fsrs, type Grade, Rating } from "ts-fsrs";
import type { LearnerSession } from "../../casebook/learners/learnerFile";
import { type HowItWent, howItWent } from "./howItWent";

/** A job comes back when it is as likely as this to be got again. The scheduler's own default. */
const stillKnown = 0.9;
/** Once a year is seldom enough for a job that never goes wrong. Chosen. */
const mostDays = 365;
const dayMs = 86_400_000;

/** Whole days, nothing drawn at random: the same sessions give the same day on every machine. */
const scheduler = fsrs({
  request_retention: stillKnown,
  maximum_interval: mostDays,
  enable_short_term: false,
  enable_fuzz: false,
});

const grades: Readonly<Record<HowItWent, Grade>> = {
  missed: Rating.Again,
  nearly: Rating.Hard,
  "got it": Rating.Good,
  "got it cleanly": Rating.Easy,
};

/**
 * The day on which a job should be seen again: every session with it moves the day on, the further the better it went and the
 * longer it had been remembered.
 *
 * @param sessions with one case, in the order of their days
 * @returns year-month-day, a day to a year after the last session; undefined for no sessions
 * Source: the three-component model of memory (difficulty, stability, retrievability) of Ye, Su & Cao 2022, as the library
 *   ts-fsrs has it with its default weights.
 */
export function comesBack(sessions: readonly LearnerSession[]): string | undefined {
  const [first, final] = [sessions[0], sessions.at(-1)];
  if (!first || !final) return undefined;
  const card = sessions.reduce<Card>(
    (before, session) => scheduler.next(before, noon(session.day), grades[howItWent(session)]).card,
    createEmptyCard(noon(first.day)),
  );
  // The scheduler keeps its grades a day apart, also at the end of the scale.
  const latest = noon(final.day).getTime() + mostDays * dayMs;
  return new Date(Math.min(card.due.getTime(), latest)).toISOString().slice(0, 10);
}

/** The middle of a day, so that no shift of an hour moves it to another. */
const noon = (day: string) => new Date(`${day}T12:00:00Z`);
