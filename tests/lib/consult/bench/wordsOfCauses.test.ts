import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { causeModelOf } from "@/lib/consult/bench/causeModelOf";
import { learnNote, pairModelOf, wordModelOf } from "@/lib/consult/bench/wordsOfCauses";
import { buildReader } from "@/lib/reading/reader";
import { smallVocabulary } from "../../reading/smallVocabulary";

const notes = ["zebra stripes inside", "zebra stripes again", "quagga grunts"];
const [cause = "", other = ""] = [...smallVocabulary.causes.keys()];
const vocabulary = { ...smallVocabulary, causeNotes: new Map([[cause, notes]]) };
const reader = buildReader(vocabulary);
const model = causeModelOf(vocabulary);
const build = () => ({
  spoken: wordModelOf(vocabulary, model, reader),
  pairs: pairModelOf(vocabulary, model.causes, reader),
  reader,
});
const rowOf = (id: string) => model.causes.indexOf(id);

describe("the words by which causes are told", () => {
  it("are those of the notes on them, too: a text told alike goes with its cause alone", () => {
    const affinity = build().spoken.affinity(["quagga"]);
    expect(affinity[rowOf(cause)]).toBeGreaterThan(0);
    expect(affinity[rowOf(other)]).toBe(0);
  });

  it("stand side by side as pairs only where two texts have them so", () => {
    const { pairs } = build();
    expect(pairs.has("zebra stripe")).toBe(true);
    expect(pairs.has("quagga grunt")).toBe(false);
  });

  it("are as they were once a note is taken back and given again", () => {
    fc.assert(
      fc.property(fc.shuffledSubarray(notes, { minLength: 1 }), (some) => {
        const [before, bench] = [build(), build()];
        for (const note of some) {
          learnNote(bench, cause, note, -1);
          learnNote(bench, cause, note, 1);
        }
        for (const [terms, name] of [
          [["zebra", "stripe", "quagga"], "spoken"],
          [["zebra stripe", "stripe again"], "pairs"],
        ] as const) {
          const now = bench[name].affinity(terms);
          for (const [row, one] of before[name].affinity(terms).entries())
            expect(now[row]).toBeCloseTo(one, 9);
        }
      }),
    );
  });

  it("no longer know a word whose only note is taken back", () => {
    const bench = build();
    learnNote(bench, cause, "quagga grunts", -1);
    expect(bench.spoken.has("quagga")).toBe(false);
    expect([...bench.spoken.affinity(["quagga"])]).toEqual(model.causes.map(() => 0));
  });
});
