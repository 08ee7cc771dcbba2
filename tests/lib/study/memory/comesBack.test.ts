import fc from "fast-check";
import { default_w } from "ts-fsrs";
import { describe, expect, it } from "vitest";
import { comesBack } from "@/lib/study/memory/comesBack";
import { session, went } from "./sessions";

const dayMs = 86_400_000;
const dayAfter = (day: string, days: number) =>
  new Date(Date.parse(`${day}T00:00:00Z`) + days * dayMs).toISOString().slice(0, 10);
const daysBetween = (from: string, to: string) => (Date.parse(to) - Date.parse(from)) / dayMs;
const first = "2026-03-01";
const wait = (...ways: (keyof typeof went)[]) => {
  let day = first;
  let waited = 0;
  const sessions = [];
  for (const way of ways) {
    sessions.push(session({ ...went[way], day }));
    const due = comesBack(sessions) ?? first;
    waited = daysBetween(day, due);
    day = due;
  }
  return waited;
};

/**
 * The published formulas of the scheduler (Ye, Su & Cao 2022 and its later version with 21 weights), written out once more:
 * stability after the first success, then after a second one on the day it fell due, in days at 9 in 10 known.
 */
function secondStability(waited: number): number {
  const w = (at: number) => default_w[at] ?? Number.NaN;
  const good = 3;
  const stability = w(good - 1);
  const difficulty = w(4) - Math.exp(w(5) * (good - 1)) + 1;
  const decay = -w(20);
  const factor = 0.9 ** (1 / decay) - 1;
  const known = (1 + (factor * waited) / stability) ** decay;
  const growth =
    Math.exp(w(8)) * (11 - difficulty) * stability ** -w(9) * (Math.exp(w(10) * (1 - known)) - 1);
  return stability * (growth + 1);
}

describe("the day on which a job comes back", () => {
  it("is none for a job that was never worked through", () => {
    expect(comesBack([])).toBeUndefined();
  });

  it("is the next day for one that was missed, and later the better it went", () => {
    const waits = [wait("missed"), wait("nearly"), wait("got"), wait("cleanly")];
    expect(waits[0]).toBe(1);
    expect(waits).toEqual([...waits].sort((a, b) => a - b));
    expect(new Set(waits).size).toBe(4);
  });

  it("is as many days off as the published formulas say, worked out once more beside it", () => {
    // Initial stability of the best grade, rounded to days.
    expect(wait("cleanly")).toBe(Math.round(default_w[3] ?? Number.NaN));
    expect(wait("got", "got")).toBe(Math.round(secondStability(wait("got"))));
  });

  it("moves further off with every success, and a year at most", () => {
    const waits = [1, 2, 3, 4, 5, 6, 7, 8].map((times) => wait(...Array<"got">(times).fill("got")));
    for (const [at, days] of waits.entries()) expect(days).toBeGreaterThanOrEqual(waits[at - 1] ?? 0);
    expect(waits.at(-1)).toBe(365);
  });

  it("draws near again once it was missed", () => {
    expect(wait("got", "got", "got", "missed")).toBeLessThan(wait("got", "got", "got"));
  });

  it("is after the last session, and the same every time, whatever happened", () => {
    const ways = fc.constantFrom<keyof typeof went>("missed", "nearly", "got", "cleanly");
    fc.assert(
      fc.property(
        fc.array(fc.record({ way: ways, gap: fc.integer({ min: 1, max: 400 }) }), {
          minLength: 1,
          maxLength: 20,
        }),
        (story) => {
          let day = first;
          const sessions = story.map(({ way, gap }) => {
            day = dayAfter(day, gap);
            return session({ ...went[way], day });
          });
          const due = comesBack(sessions) ?? "";
          expect(due > day).toBe(true);
          expect(daysBetween(day, due)).toBeLessThanOrEqual(365);
          expect(comesBack(sessions)).toBe(due);
        },
      ),
      { numRuns: 200 },
    );
  });
});
