import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { measureTerm, prepareWords, splitTokens, tellingTerms } from "@/lib/reading/words/token";
import { smallVocabulary } from "../smallVocabulary";

const words = prepareWords(smallVocabulary.words);
const split = (text: string) => splitTokens(text, words);
const texts = (text: string) => split(text).map((token) => token.text);

describe("splitTokens", () => {
  it("keeps a fraction, a decimal and an ordinal whole", () => {
    expect(texts("2nd hangs 1/4 of 0.669, .002 or 3rd")).toEqual([
      "2nd",
      "hangs",
      "1/4",
      "of",
      "0.669",
      ".002",
      "or",
      "3rd",
    ]);
  });

  it("writes short forms out, each word at the place of the short form", () => {
    const [without, half, way] = split("w/o halfway");
    expect(without).toMatchObject({ text: "without", start: 0, end: 3 });
    expect(half).toMatchObject({ text: "half", start: 4, end: 11 });
    expect(way).toMatchObject({ text: "way", start: 4, end: 11, breakBefore: "none" });
  });

  it("takes a short form only where the word ends: 'w/' is not the start of 'w/out'", () => {
    expect(texts("w/ dents")).toEqual(["with", "dents"]);
    expect(texts("w/out")).toEqual(["w", "out"]);
  });

  it("counts places by ordinals, number words and small numbers", () => {
    expect(split("1st second 3 valve").map(({ place }) => place)).toEqual([1, 2, 3, undefined]);
    expect(split("0 123 2024").map(({ place }) => place)).toEqual([undefined, undefined, undefined]);
  });

  it("takes a decimal, and a number with its unit, for a measure that counts no place", () => {
    for (const text of [".002", "0.669", "2 thou", "17 mm"]) {
      expect(split(text)[0]).toMatchObject({ term: measureTerm });
      expect(split(text)[0]).not.toHaveProperty("place");
    }
    expect(split("2, thou")[0]).toMatchObject({ place: 2 });
  });

  it("lets a fraction with a unit keep its own term", () => {
    expect(split("1/4 mm")[0]?.term).toBe("1/4");
  });

  it("tells what stands before a word: nothing, a comma or dash, a full stop or line end", () => {
    expect(split("a b, c - d (e: f. g\nh; i").map(({ breakBefore }) => breakBefore)).toEqual([
      "none",
      "none",
      "clause",
      "clause",
      "clause",
      "clause",
      "sentence",
      "sentence",
      "sentence",
    ]);
    expect(split("semi-fine").map(({ breakBefore }) => breakBefore)).toEqual(["none", "none"]);
  });

  it("reads the two apostrophes and their absence alike", () => {
    expect(split("doesn't doesn’t doesnt").map(({ term }) => term)).toEqual(["doesnt", "doesnt", "doesnt"]);
  });

  it("has tokens in the order of the text, inside it and without overlap, whatever the text", () => {
    fc.assert(
      fc.property(fc.string({ unit: "binary", maxLength: 200 }), (text) => {
        let last = 0;
        for (const { start, end } of split(text)) {
          expect(start).toBeGreaterThanOrEqual(Math.min(last, start));
          expect(start).toBeLessThan(end);
          expect(end).toBeLessThanOrEqual(text.length);
          expect(end).toBeGreaterThanOrEqual(last);
          last = end;
        }
      }),
    );
  });
});

describe("tellingTerms", () => {
  const some = fc.oneof(
    fc.constantFrom(
      ...Object.keys(smallVocabulary.words.shortForms),
      ...smallVocabulary.words.fillers,
      ...smallVocabulary.words.units,
      ...Object.keys(smallVocabulary.words.numbers),
      ...["2nd", "3", ".002", "1/4", "0.669", "W/O", "valve's", "Größe", "ſ", "K", "ß", "—", ", ", "w/out"],
    ),
    fc.string({ unit: "grapheme", maxLength: 6 }),
  );

  it("are the terms of the tokens that are no fillers, whatever the text", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(some, fc.constantFrom("", " ", ". ")), { maxLength: 12 }), (list) => {
        const text = list.flat().join("");
        expect(tellingTerms(text, words)).toEqual(
          split(text).flatMap(({ term, filler }) => (filler ? [] : [term])),
        );
      }),
      { numRuns: 1000 },
    );
  });

  it("find every short form that the one long pattern finds", () => {
    fc.assert(
      fc.property(fc.array(some, { maxLength: 8 }), (list) => {
        const text = list.join(" ");
        const whole = [...text.matchAll(words.pattern)].map((match) => match.index);
        expect([...new Set(split(text).map(({ start }) => start))]).toEqual(whole);
      }),
      { numRuns: 1000 },
    );
  });
});
