import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { openBench } from "@/lib/consult/bench/openBench";
import { sampleSayings } from "@/lib/evaluation/reading/sampleSayings";
import { phraseSchema } from "@/lib/evaluation/scorePhrases";
import { weighClause } from "@/lib/reading/clauses/weighClause";
import type { ReadingWeights } from "@/lib/vocabulary/readingWeights";

const { bench } = openBench({});
const { sayings, readingWeights, checks } = bench.vocabulary;
const plain = (says: string) =>
  says
    .toLowerCase()
    .replace(/[^a-z0-9#]+/g, " ")
    .trim();

describe("the sayings", () => {
  it("come once each, and none of them is a phrase by which reading is judged", () => {
    const said = sayings.map(({ says }) => plain(says));
    expect(said.filter((says, at) => said.indexOf(says) !== at)).toEqual([]);
    const judged = ["tuning", "heldBack"].flatMap((name) =>
      z.array(phraseSchema).parse(JSON.parse(readFileSync(`tests/reference/phrases/${name}.json`, "utf8"))),
    );
    const known = new Set(said);
    expect(judged.filter(({ says }) => known.has(plain(says))).length).toBe(0);
  });

  it("tell of three checks in four, and of good news as well as bad", () => {
    const told = sayings.flatMap(({ means }) => means);
    const toldOf = new Set(told.map(({ check }) => check));
    expect(toldOf.size).toBeGreaterThan(0.75 * checks.size);
    const good = told.filter(({ check, outcome }) => checks.get(check)?.normal === outcome).length;
    expect(good / told.length).toBeGreaterThan(0.15);
    expect(good / told.length).toBeLessThan(0.5);
  });
});

describe("the weights of reading", () => {
  const samples = sampleSayings(bench.reader);
  /** Mean log loss over all that the clauses tell, and over those that tell nothing. */
  const bitsBy = (weights: ReadingWeights) => {
    const shares = samples.flatMap(({ sources, open, tells }) => {
      const { outcomes, nothing } = weighClause(sources, weights, open);
      return tells.length === 0 ? [nothing] : tells.map((row) => outcomes[row] ?? 0);
    });
    return shares.reduce((sum, share) => sum - Math.log2(Math.max(share, 1e-9)), 0) / shares.length;
  };

  /* Learning them anew takes minutes (npm run -s evaluate -- --reading): here none may be better a quarter more or less. */
  it("are those that the sayings teach", { timeout: 120_000 }, () => {
    const kept = bitsBy(readingWeights);
    expect(kept).toBeLessThan(2.4);
    for (const [name, weight] of Object.entries(readingWeights)) {
      for (const times of [0.75, 1.25])
        expect({ name, times, bits: bitsBy({ ...readingWeights, [name]: times * weight }) }).toEqual({
          name,
          times,
          bits: expect.toSatisfy((bits: number) => bits > kept - 0.001),
        });
    }
  });
});
