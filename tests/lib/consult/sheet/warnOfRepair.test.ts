import { describe, expect, it } from "vitest";
import { openBench } from "@/lib/consult/bench/openBench";
import { likeCases } from "@/lib/consult/likeCases";
import { consultSheet } from "@/lib/consult/sheet/consultSheet";
import { warnOfRepair } from "@/lib/consult/sheet/warnOfRepair";
import { jobInView } from "@/lib/consult/similarCases";

const { bench } = openBench({});

describe("what a sheet tells before a repair", () => {
  it("is what the bench warns of for the same job, word for word", () => {
    const asked = [...bench.cases.values()].filter((_, at) => at % 4 === 0);
    const told = asked.flatMap((kase) => {
      const job = jobInView(kase.instrument, likeCases(kase, bench));
      return consultSheet(kase, bench).warnings.map((warning) => {
        expect(warnOfRepair(bench, warning.repair, job)).toEqual(warning);
        return warning.likeJobs?.among;
      });
    });
    // The demo holds jobs of all kinds: those with enough like ones, with enough of the family, and with neither.
    expect(new Set(told)).toEqual(new Set(["like", "family", "all", undefined]));
  });

  it("names the harms of like cases first", () => {
    const harmed = [...bench.cases.values()].filter(({ harms }) => harms.length > 0);
    for (const kase of harmed) {
      const [harm] = kase.harms;
      const { instrument } = kase;
      const warning = warnOfRepair(bench, harm?.repair ?? "", { instrument, like: [kase] });
      expect(warning?.harms[0]?.case).toBe(kase.id);
      expect(warning?.why).toBe(harm?.what);
    }
    expect(harmed.length).toBeGreaterThan(0);
  });

  it("is nothing for a repair that the handbook does not know", () => {
    expect(warnOfRepair(bench, "no-such-repair", { instrument: undefined, like: [] })).toBeUndefined();
  });
});
