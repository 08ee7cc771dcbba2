import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { CauseModel, Lesson } from "@/lib/diagnosis/causeModel";
import { smallKinds, smallModel } from "./smallModel";

const cells = (model: CauseModel) =>
  smallKinds.flatMap(({ key, outcomes }) =>
    outcomes.flatMap((outcome) => [...(model.likelihoods(key, outcome) ?? [])]),
  );
const lesson = (cause: string, findings: Record<string, string>, share = 1): Lesson => ({
  causes: [{ id: cause, share }],
  findings: new Map(Object.entries(findings)),
});
const lessons = fc.array(
  fc
    .record({
      cause: fc.constantFrom("dirt", "dent", "wear"),
      share: fc.double({ min: 0, max: 1, noNaN: true }),
      travel: fc.constantFrom("free", "drags", "hangs"),
      casing: fc.constantFrom("sound", "dented"),
    })
    .map(({ cause, share, travel, casing }) => lesson(cause, { travel, casing }, share)),
  { maxLength: 40 },
);

describe("CauseModel", () => {
  it("has likelihoods that add up to 1 over a check's outcomes, whatever it has learned", () => {
    fc.assert(
      fc.property(lessons, (learned) => {
        const model = smallModel();
        for (const one of learned) model.learn(one);
        for (const { key, outcomes } of smallKinds) {
          for (const row of model.causes.keys()) {
            const values = outcomes.map((outcome) => model.likelihoods(key, outcome)?.[row] ?? Number.NaN);
            expect(Math.min(...values)).toBeGreaterThan(0);
            expect(values.reduce((sum, value) => sum + value, 0)).toBeCloseTo(1, 12);
          }
        }
      }),
      { numRuns: 50 },
    );
  });

  it("is as before when what it learned is taken back", () => {
    fc.assert(
      fc.property(lessons, lessons, (kept, passing) => {
        const model = smallModel();
        for (const one of kept) model.learn(one);
        const before = cells(model);
        const jobs = model.causes.map((_, row) => model.jobsOf(row));
        for (const one of passing) model.learn(one);
        for (const one of passing.toReversed()) model.learn(one, -1);
        for (const [at, value] of cells(model).entries()) expect(value).toBeCloseTo(before[at] ?? 0, 12);
        for (const [row, value] of jobs.entries()) expect(model.jobsOf(row)).toBeCloseTo(value, 12);
      }),
      { numRuns: 50 },
    );
  });

  it("learns the same in any order", () => {
    fc.assert(
      fc.property(lessons, (learned) => {
        const [one, other] = [smallModel(), smallModel()];
        for (const each of learned) one.learn(each);
        for (const each of learned.toReversed()) other.learn(each);
        for (const [at, value] of cells(one).entries()) expect(value).toBeCloseTo(cells(other)[at] ?? 0, 12);
      }),
      { numRuns: 20 },
    );
  });

  it("holds a finding likelier under a cause the more jobs show both", () => {
    const model = smallModel();
    const of = (cause: number) => model.likelihoods("casing", "dented")?.[cause] ?? 0;
    let [before, elsewhere] = [of(2), of(0)];
    for (let job = 0; job < 5; job++) {
      model.learn(lesson("wear", { casing: "dented" }));
      expect(of(2)).toBeGreaterThan(before);
      // What a job shows of one cause moves another only by way of the background.
      expect(of(2) - before).toBeGreaterThan(of(0) - elsewhere);
      [before, elsewhere] = [of(2), of(0)];
    }
  });

  it("comes as near as one likes to what the cases show when there are many", () => {
    const model = smallModel();
    for (let job = 0; job < 3000; job++)
      model.learn(lesson("dirt", { travel: job % 4 === 0 ? "free" : "hangs" }));
    expect(model.likelihoods("travel", "hangs")?.[0]).toBeCloseTo(0.75, 2);
    expect(model.likelihoods("travel", "free")?.[0]).toBeCloseTo(0.25, 2);
  });

  it("starts in the handbook's order: what a cause is said to do is likeliest under it", () => {
    const [dirt = 0, dent = 0, wear = 0] = smallModel().likelihoods("travel", "hangs") ?? [];
    expect(dent).toBeGreaterThan(dirt);
    expect(dent).toBeGreaterThan(wear);
  });

  it("divides a job between its causes by their share of the blame", () => {
    const model = smallModel();
    model.learn({
      causes: [
        { id: "dirt", share: 0.75 },
        { id: "dent", share: 0.25 },
      ],
      findings: new Map(),
    });
    expect([0, 1, 2].map((row) => model.jobsOf(row))).toEqual([6.75, 3.25, 1]);
  });

  it("passes over causes, checks and outcomes that it does not know", () => {
    const model = smallModel();
    const before = cells(model);
    model.learn(lesson("unheard-of", { travel: "hangs" }));
    model.learn(lesson("dirt", { "unheard-of": "hangs", travel: "unheard-of" }, 0.5));
    expect(cells(model)).toEqual(before);
    expect(model.jobsOf(0)).toBe(6.5);
    expect(model.likelihoods("unheard-of", "hangs")).toBeUndefined();
    expect(model.likelihoods("travel", "unheard-of")).toBeUndefined();
    expect(model.kindOf("unheard-of")).toBeUndefined();
  });
});
