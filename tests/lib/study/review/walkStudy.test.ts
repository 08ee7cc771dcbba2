import { describe, expect, it } from "vitest";
import { scorePath } from "@/lib/study/review/scorePath";
import { walkStudy } from "@/lib/study/review/walkStudy";
import { found, studyBench, studyCase } from "../studyBench";

const kase = studyCase([found("dirt-seen", "no"), found("dent-seen", "yes")]);
const walk = (...asked: string[]) => walkStudy(kase, asked, studyBench);
const dirtAndDent = ({ causes, noneFits }: ReturnType<typeof walk>["beliefs"][number]) => [
  causes[0] ?? 0,
  causes[1] ?? 0,
  noneFits,
];

// Before anything: 0.576 dirt, 0.384 dent, 0.04 neither. A dent seen: times 0.068, 0.923, 0.5, over their sum 0.4136.
const before = [0.576, 0.384, 0.04];
const after = [0.039168 / 0.4136, 0.354432 / 0.4136, 0.02 / 0.4136];
const taught = after.reduce((sum, now, at) => sum + now * Math.log2(now / (before[at] ?? 1)), 0);

describe("a walk through the checks of a past job", () => {
  it("has one belief before the first check and one after each, worked out by hand", () => {
    const { beliefs } = walk("dent-seen");
    expect(beliefs).toHaveLength(2);
    for (const [at, probability] of before.entries())
      expect(beliefs[0] && dirtAndDent(beliefs[0])[at]).toBeCloseTo(probability, 10);
    for (const [at, probability] of after.entries())
      expect(beliefs[1] && dirtAndDent(beliefs[1])[at]).toBeCloseTo(probability, 10);
  });

  it("says what each check cost and taught: 0.759 bits for a dent seen", () => {
    const [first] = walk("dent-seen").checks;
    expect(first).toMatchObject({ check: "dent-seen", minutes: 2, riskClass: 0, done: true });
    expect(first?.gainBits).toBeCloseTo(taught, 10);
    expect(taught).toBeCloseTo(0.759, 3);
  });

  it("does not move belief by a check that was not done on this job, but spends its minutes", () => {
    const { checks, beliefs } = walk("ask-age");
    expect(checks[0]).toMatchObject({ minutes: 1, gainBits: 0, done: false });
    expect(beliefs[1]).toEqual(beliefs[0]);
  });

  it("ends at the same belief in whatever order the checks are asked for", () => {
    const one = walk("dent-seen", "dirt-seen").beliefs.at(-1)?.causes;
    const other = walk("dirt-seen", "dent-seen").beliefs.at(-1)?.causes;
    for (const [row, probability] of (one ?? []).entries()) expect(other?.[row]).toBeCloseTo(probability, 12);
  });
});

describe("the score of a way", () => {
  const step = (minutes: number, riskClass: number, gainBits: number) => ({
    check: "any",
    minutes,
    riskClass,
    gainBits,
    done: true,
  });

  it("adds up minutes, risk and bits: classes 0, 1 and 2 are reckoned as 0, 0.3 and 2 minutes", () => {
    const score = scorePath([step(2, 0, 0.5), step(3, 1, 0.25), step(4, 2, 0)]);
    expect(score).toMatchObject({ minutes: 9, gainBits: 0.75, byRisk: [1, 1, 1, 0, 0] });
    expect(score.riskMinutes).toBeCloseTo(2.3, 12);
  });

  it("names the check that taught the most a minute, the first of equals: 0.25, 0.3 and 0.3 bits a minute", () => {
    expect(scorePath([step(4, 0, 1), step(1, 0, 0.3), step(2, 0, 0.6)]).best).toBe(1);
  });

  it("reckons under a minute as one, so that a glance does not win by dividing by nothing", () => {
    expect(scorePath([step(1, 0, 0.4), step(0, 0, 0.3)]).best).toBe(0);
  });

  it("is nothing for no checks, and has no best where none taught anything", () => {
    expect(scorePath([])).toEqual({
      minutes: 0,
      riskMinutes: 0,
      byRisk: [0, 0, 0, 0, 0],
      gainBits: 0,
      best: null,
    });
    expect(scorePath([step(1, 0, 0.01)]).best).toBeNull();
  });
});
