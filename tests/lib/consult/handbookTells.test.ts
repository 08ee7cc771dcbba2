import { describe, expect, it } from "vitest";
import { causeModelOf } from "@/lib/consult/bench/causeModelOf";
import { outcomeTells } from "@/lib/consult/causes/outcomeTells";
import { tellTales } from "@/lib/consult/causes/tellTales";
import { repairResults } from "@/lib/consult/repairs/repairResults";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";

const { vocabulary } = loadVocabulary("content/vocabulary");
const bench = { vocabulary, model: causeModelOf(vocabulary) };
const dry = vocabulary.causes.get("dry-or-wrong-oil");
const oilResponse = vocabulary.checks.get("oil-response");

describe("what a cause's checks tell", () => {
  const told = dry ? tellTales(dry, bench) : [];
  const oil = told.find(({ check, others }) => check === "oil-response" && !others);
  const decibans = (outcome: string) => oil?.tells.find((tell) => tell.outcome === outcome)?.decibans;

  it("speaks for the cause where the outcome is met more with it than with others, and against where less", () => {
    expect(decibans("cured")).toBeGreaterThan(3);
    expect(decibans("no-change")).toBeLessThan(-3);
  });

  it("lists every outcome that the handbook words, for the cause itself and for its siblings", () => {
    expect(told).toHaveLength(
      Object.keys(dry?.findings ?? {}).length + Object.keys(dry?.others ?? {}).length,
    );
    expect(oil?.tells).toHaveLength(Object.keys(dry?.findings["oil-response"] ?? {}).length);
  });

  it("puts the most telling check first and the outcome that speaks most for the cause first within it", () => {
    const strength = told.map(({ tells }) => Math.max(...tells.map((tell) => Math.abs(tell.decibans))));
    expect(strength).toEqual([...strength].sort((a, b) => b - a));
    for (const { tells } of told) {
      const weights = tells.map((tell) => tell.decibans);
      expect(weights).toEqual([...weights].sort((a, b) => b - a));
    }
  });
});

describe("what a check's outcomes tell", () => {
  it("names a cause on the side on which its own tell-tales put it", () => {
    const told = oilResponse ? outcomeTells(oilResponse, bench) : [];
    expect(told.map(({ outcome }) => outcome)).toEqual(oilResponse?.outcomes.map(({ id }) => id));
    const cured = told.find(({ outcome }) => outcome === "cured");
    expect(cured?.for.map(({ id }) => id)).toContain("dry-or-wrong-oil");
    expect(cured?.against.map(({ id }) => id)).not.toContain("dry-or-wrong-oil");
  });
});

describe("how a repair went in a case", () => {
  const step = (repair: string, result: "fixed" | "better" | "no-change" | "harm") => ({
    repair,
    result,
    minutes: 1,
  });

  it("is its last result, with the harm that it did on the way", () => {
    const path = [step("flush-grit", "harm"), step("clean-and-oil", "better"), step("flush-grit", "fixed")];
    expect(repairResults({ path, harms: [] }, "flush-grit")).toEqual({ last: "fixed", didHarm: true });
    expect(repairResults({ path, harms: [] }, "clean-and-oil")).toEqual({ last: "better", didHarm: false });
  });

  it("did harm where the case lists it, even when no step says so, and has no result where it was not done", () => {
    const harms = [{ repair: "press-out", what: "a crease", minutes: 5, paidBy: "shop" as const }];
    expect(repairResults({ path: [], harms }, "press-out")).toEqual({ last: undefined, didHarm: true });
  });
});
