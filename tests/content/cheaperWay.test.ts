import { describe, expect, it } from "vitest";
import { openBench } from "@/lib/consult/bench/openBench";
import { legalAsks } from "@/lib/study/asking/legalAsks";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import { cheaperWay } from "@/lib/study/review/cheaperWay";

const { bench } = openBench({ BENCHLORE_CACHE: "none" });
const { vocabulary } = bench;
const jobs = [...bench.cases.values()].filter(isFitForStudy);
const jobOf = (id: string) => {
  const kase = bench.cases.get(id);
  if (!kase) throw new Error(`case ${id} must be in the casebook; it is not; choose another`);
  return kase;
};
const minutesOf = (checks: readonly string[]) =>
  checks.reduce((sum, id) => sum + (vocabulary.checks.get(id)?.minutes ?? Number.NaN), 0);

describe("a cheaper path beside the recorded one", () => {
  it("is told with minutes that add up by hand from the handbook", () => {
    const way = cheaperWay(jobOf("24-004"), bench);
    for (const one of [way?.recorded, way?.planned])
      expect(one?.score.minutes).toBe(minutesOf(one?.checks.map(({ check }) => check) ?? []));
    expect(way?.kind).toBe("cheaper");
  });

  it("is called cheaper only where it costs less and shows the root cause no less, case by case", () => {
    const kinds = jobs.map((kase) => {
      const way = cheaperWay(kase, bench);
      if (!way) throw new Error(`${kase.id} must have both ways; it has none; mend cheaperWay`);
      const { recorded, planned, savedMinutes, kind } = way;
      const cost = ({ score }: typeof recorded) => score.minutes + score.riskMinutes;
      expect(savedMinutes).toBeCloseTo(cost(recorded) - cost(planned), 9);
      const ends = [recorded, planned].map(({ root, checks }) => {
        expect(root).toHaveLength(checks.length + 1);
        return root.at(-1) ?? 0;
      });
      const isSure = (ends[1] ?? 0) >= (ends[0] ?? 0) - 0.05;
      expect(kind).toBe(savedMinutes < 1 ? "no cheaper" : isSure ? "cheaper" : "less sure");
      const asks = planned.checks.map(({ check }) => check);
      expect(legalAsks(kase, asks, vocabulary)).toEqual(asks);
      return kind;
    });
    expect(new Set(kinds).size).toBe(3);
  });

  it("leaves the bench as it was: a second look gives the same", () => {
    const kase = jobOf("23-085");
    const [one, other] = [cheaperWay(kase, bench), cheaperWay(kase, bench)];
    expect(one?.planned.checks.map(({ check }) => check)).toEqual(
      other?.planned.checks.map(({ check }) => check),
    );
  });

  it("is not told of an open job", () => {
    expect(cheaperWay({ ...jobOf("24-004"), status: "open" }, bench)).toBeNull();
  });
});
