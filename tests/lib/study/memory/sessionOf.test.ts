import { describe, expect, it } from "vitest";
import { sessionSchema } from "@/lib/casebook/learners/learnerFile";
import { openBench } from "@/lib/consult/bench/openBench";
import { sessionOf } from "@/lib/study/memory/sessionOf";
import { reviewStudy } from "@/lib/study/review/reviewStudy";

const { bench } = openBench({ BENCHLORE_CACHE: "none" });

describe("what is kept of a session", () => {
  const kase = bench.cases.get("23-085");
  if (!kase) throw new Error("case 23-085 must be in the casebook; it is not; choose another");
  const named = [{ cause: "casing-dented", sure: 0.7 }];
  const asked = ["valve-travel", "oil-response"];
  const review = reviewStudy(kase, bench, { asked, named, repair: undefined, first: undefined });
  const session = sessionOf(kase, review, named, { day: "2026-03-01", lesson: null });

  it("is what was said, the score worked out by hand, and what both ways cost by the handbook", () => {
    const minutesOf = (ids: readonly string[]) =>
      ids.reduce((sum, id) => sum + (bench.vocabulary.checks.get(id)?.minutes ?? Number.NaN), 0);
    expect(session).toMatchObject({
      case: "23-085",
      day: "2026-03-01",
      said: [{ cause: "casing-dented", sure: 0.7 }],
      verdict: "right",
      // 0.3 squared on the right cause, and what is left spread over the other 52 causes that a baritone can have: 0.09 / 52.
      score: 0.0917,
      checks: 2,
      minutes: minutesOf(asked),
      recordMinutes: minutesOf(review.recorded.checks.map(({ check }) => check)),
    });
  });

  it("fits a learner's file, and names its lesson where there is one", () => {
    expect(sessionSchema.parse(session)).toEqual(session);
    expect(session).not.toHaveProperty("lesson");
    expect(sessionOf(kase, review, named, { day: "2026-03-01", lesson: "first" }).lesson).toBe("first");
  });
});
