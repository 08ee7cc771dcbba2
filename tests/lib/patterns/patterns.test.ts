import { describe, expect, it } from "vitest";
import { commonestRoots } from "@/lib/patterns/commonestRoots";
import { harmRates } from "@/lib/patterns/harmRates";
import { monthBefore } from "@/lib/patterns/monthBefore";
import { newSince } from "@/lib/patterns/newSince";
import { quoteRecord } from "@/lib/patterns/quoteRecord";
import { thinPlaces } from "@/lib/patterns/thinPlaces";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { patternCases } from "./patternCases";

describe("what goes with a maker", () => {
  const told = commonestRoots(patternCases, "maker", { vocabulary: smallVocabulary, most: 1 });

  it("is its finished jobs' commonest root causes, without those that a repair brought on", () => {
    // Marrowby: oil in a and b, a dent in e; the job still open has no root cause yet.
    expect(told.get("Marrowby")).toEqual([{ value: "gummed-oil", count: 2, running: 2 / 3 }]);
    expect(told.get("Corvane")).toEqual([{ value: "casing-dented", count: 1, running: 1 }]);
  });
});

describe("minutes and money against what was quoted", () => {
  it("are summed over the finished jobs that have them, and say how many those are", () => {
    expect(quoteRecord(patternCases)).toEqual({
      jobs: 5,
      timed: 4, // a, b, c, e; d was not quoted, f is open
      standings: { under: 1, held: 1, over: 1, "far-over": 1 }, // 30 and 60 of 40, 200 and 100 of 100
      quotedMinutes: 280, // 40 + 40 + 100 + 100
      tookMinutes: 390, // 30 + 60 + 200 + 100
      priced: 3, // a, b, e
      quotedPrice: 220, // 50 + 50 + 120
      charged: 240, // 50 + 60 + 130
      swallowing: 1,
      swallowedMinutes: 20,
      swallowedMoney: 25,
    });
  });
});

describe("harm by repair", () => {
  const rates = harmRates(patternCases);

  it("counts a job once a repair, and leaves out repairs that never did harm and jobs still open", () => {
    // Cleaned and oiled in a, b and d (twice in d); harm in b. Easing did none.
    expect(rates).toMatchObject([{ repair: "clean-and-oil", done: 3, harmed: 1, minutes: 15 }]);
  });

  it("has the interval of 1 in 3", () => {
    // Source: the quantiles of Beta(1.5, 2.5) by SciPy 1.17, scipy.stats.beta(1.5, 2.5).ppf([0.025, 0.975]).
    expect(rates[0]?.low).toBeCloseTo(0.0387, 4);
    expect(rates[0]?.high).toBeCloseTo(0.8233, 4);
  });

  it("puts the surest harm first", () => {
    const job = (id: string, repair: string, result: string) =>
      makeCase({ id, status: "closed", path: [{ repair, result }] });
    const cases = [
      job("once", "ease-casing", "harm"),
      ...Array.from({ length: 9 }, (_, at) => job(`often-${at}`, "clean-and-oil", "harm")),
    ];
    expect(harmRates(cases).map(({ repair }) => repair)).toEqual(["clean-and-oil", "ease-casing"]);
  });
});

describe("where the casebook is thin", () => {
  it("names causes with fewer than three finished jobs, checks and repairs with none", () => {
    expect(thinPlaces(patternCases, smallVocabulary, undefined)).toEqual({
      causes: [{ id: "casing-dented", cases: 2 }],
      checks: ["which-way"],
      repairs: [],
    });
    expect(thinPlaces([], smallVocabulary, "cornet")).toEqual({
      causes: [
        { id: "gummed-oil", cases: 0 },
        { id: "casing-dented", cases: 0 },
      ],
      checks: ["valve-travel", "where-it-catches", "which-way"],
      repairs: ["clean-and-oil", "ease-casing"],
    });
  });

  it("looks through one family's part of the handbook", () => {
    expect(thinPlaces([], smallVocabulary, "flute")).toEqual({ causes: [], checks: [], repairs: [] });
  });
});

describe("what is new", () => {
  it("are the jobs closed since, the last first, and what no job before had", () => {
    const news = newSince(patternCases, "2025-03-03");
    expect(news.cases.map(({ id }) => id)).toEqual(["e", "c", "d"]);
    expect(news.causes).toEqual(["casing-dented"]);
    expect(news.repairs).toEqual(["ease-casing"]);
    expect(news.harms).toEqual([]);
    expect(newSince(patternCases, "2024-02-02").harms.map(({ id }) => id)).toEqual(["b"]);
  });

  it("counts from the same day of the month before, or the last one that it has", () => {
    expect(monthBefore("2026-11-27")).toBe("2026-10-27");
    expect(monthBefore("2026-01-05")).toBe("2025-12-05");
    expect(monthBefore("2026-03-31")).toBe("2026-02-28");
    expect(monthBefore("2024-03-30")).toBe("2024-02-29");
  });
});
