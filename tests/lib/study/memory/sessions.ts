import { type LearnerSession, sessionSchema } from "@/lib/casebook/learners/learnerFile";

/** A session that was got, not cleanly, with whatever a test is about. */
export const session = (fields: Partial<LearnerSession> = {}): LearnerSession =>
  sessionSchema.parse({
    case: "24-001",
    day: "2026-03-01",
    said: [{ cause: "casing-dented", sure: 0.6 }],
    verdict: "right",
    score: 0.164,
    checks: 3,
    minutes: 10,
    atStake: 1,
    recordMinutes: 12,
    recordAtStake: 1,
    tooSoon: 0,
    ...fields,
  });

/** One that went in each of the four ways. */
export const went = {
  missed: { verdict: "missed", score: 1.2 },
  nearly: { verdict: "among them", score: 0.8 },
  got: { verdict: "right", score: 0.164 },
  cleanly: { verdict: "right", score: 0.08 },
} as const;
