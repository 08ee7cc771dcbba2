import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildTextIndex } from "@/lib/text/textIndex";
import { wordSimilarities } from "@/lib/text/wordSimilarities";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const index = buildTextIndex(
  [
    makeCase({ id: "23-001", title: "Valve sticks", complaint: "Valve sticks in the cold." }),
    makeCase({ id: "23-002", title: "Valve clatters", complaint: "A felt is gone." }),
    makeCase({ id: "23-003", title: "Slide stuck", complaint: "The slide will not come." }),
  ],
  smallVocabulary,
);
const alike = (text: string) => wordSimilarities(index, text);

describe("how alike a text and the cases are by their words", () => {
  it("is told for the cases that hold a word of it, and for no others", () => {
    expect([...alike("the valve sticks").keys()].sort()).toEqual(["23-001", "23-002"]);
    expect([...alike("slides").keys()]).toEqual(["23-003"]);
  });

  it("is 1 for a best case that holds all the words, and less for one that holds fewer", () => {
    const found = alike("valve sticks");
    expect(found.get("23-001")).toBe(1);
    expect(found.get("23-002")).toBeLessThan(0.5);
  });

  it("is a quarter for a best case that holds half the words: the score grows with them and by their number", () => {
    expect(alike("clatters slide").get("23-002")).toBeLessThanOrEqual(0.25);
    expect(Math.max(...alike("clatters slide").values())).toBeCloseTo(0.25, 12);
  });

  it("passes over words that no case holds, and does not take a case's number for a word of it", () => {
    expect(alike("valve sticks zebra")).toEqual(alike("valve sticks"));
    expect(alike("valve sticks 23 001")).toEqual(alike("valve sticks"));
    expect(alike("zebra")).toEqual(new Map());
    expect(alike("")).toEqual(new Map());
  });

  it("is over 0 and at most 1 for any text, whatever the order of its words", () => {
    const word = fc.constantFrom(
      "valve",
      "sticks",
      "slide",
      "felt",
      "clatters",
      "cold",
      "come",
      "gone",
      "the",
      "zebra",
    );
    fc.assert(
      fc.property(fc.uniqueArray(word), (words) => {
        const there = alike(words.join(" "));
        const back = alike([...words].reverse().join(" "));
        expect(new Set(back.keys())).toEqual(new Set(there.keys()));
        for (const [id, similarity] of there) {
          expect(similarity).toBeGreaterThan(0);
          expect(similarity).toBeLessThanOrEqual(1);
          expect(back.get(id)).toBeCloseTo(similarity, 12);
        }
      }),
    );
  });
});
