import { describe, expect, it } from "vitest";
import { learnReadingWeights } from "@/lib/evaluation/reading/learnReadingWeights";
import { sampleSayings } from "@/lib/evaluation/reading/sampleSayings";
import { buildReader } from "@/lib/reading/reader";
import { sayingSchema } from "@/lib/vocabulary/saying";
import { smallVocabulary } from "../../reading/smallVocabulary";

/** A saying in which every named run tells one outcome. */
const saying = (says: string, told: Readonly<Record<string, string>>, also: readonly string[] = []) =>
  sayingSchema.parse({
    says,
    instrument: "trumpet",
    means: Object.entries(told).map(([words, finding]) => {
      const [check, outcome] = finding.split(" ");
      return { check, outcome, words };
    }),
    also,
  });
const lime = "deposits lime";
const read = (sayings: readonly ReturnType<typeof saying>[]) => buildReader({ ...smallVocabulary, sayings });

describe("sampleSayings", () => {
  it("asks about every clause, and tells which outcomes it has and which make sense on the instrument", () => {
    const reader = read([
      saying("chalky scale inside, ding in the barrel", {
        "chalky scale inside": lime,
        "ding in the barrel": "casing-look dented",
      }),
      saying("chalky all over", { "chalky all over": lime }),
      saying("a ding somewhere", { "a ding somewhere": "casing-look dented" }),
    ]);
    const { rowOf } = reader.spoken;
    const samples = sampleSayings(reader);
    expect(samples.map(({ tells }) => tells)).toEqual(
      [lime, "casing-look dented", lime, "casing-look dented"].map((name) => [rowOf.get(name)]),
    );
    const torn = [...rowOf].filter(([name]) => name.endsWith(" torn")).map(([, row]) => row);
    expect(torn).toHaveLength(1);
    for (const { open } of samples) expect(torn.map((row) => open[row])).toEqual([false]);
  });

  it("asks as if nobody had written the saying, and leaves the reader as it was", () => {
    const reader = read([saying("grey porridge", { "grey porridge": lime })]);
    // Nothing else was ever told with these words: without the saying no source knows the clause.
    expect(sampleSayings(reader)).toEqual([]);
    const row = reader.spoken.rowOf.get(lime) ?? -1;
    const { logs } = reader.spoken.model.weigh(["porridg"], () => true);
    expect(logs[row]).toBe(Math.max(...logs));
  });

  it("teaches nothing by a clause from which something may be read that need not be", () => {
    const open = saying("chalky, barrel dull", { chalky: lime }, ["casing-look dented"]);
    const plain = saying("chalky, barrel dull too", { chalky: lime });
    const told = saying("chalky", { chalky: lime });
    const dull = saying("dull barrel", { "dull barrel": "casing-look dented" });
    const samples = sampleSayings(read([open, plain, told, dull]));
    const tells = (says: string) =>
      samples.filter((sample) => sample.saying.says === says).map((sample) => sample.tells.length);
    expect(tells(open.says)).toEqual([1]);
    expect(tells(plain.says)).toEqual([1, 0]);
  });
});

describe("learnReadingWeights", () => {
  it("counts most what tells the sayings' meaning, and nothing that never does", () => {
    const scale = [
      "scale inside",
      "scale in a ring",
      "white scale",
      "hard scale",
      "scale on it",
      "scale again",
    ];
    const ding = ["ding up front", "a ding", "ding by the port", "small ding", "ding in it", "ding outside"];
    const reader = read([
      ...scale.map((words) => saying(words, { [words]: lime })),
      ...ding.map((words) => saying(words, { [words]: "casing-look dented" })),
    ]);
    const { weights, clauses, leftOut } = learnReadingWeights(reader);
    expect(clauses).toBe(scale.length + ding.length);
    expect(leftOut.likeliestRight).toBe(1);
    expect(weights.near + weights.words).toBeGreaterThan(weights.partBefore);
  });
});
