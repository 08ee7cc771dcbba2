import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { splitWords, toTerm } from "@/lib/text/terms";

describe("the words of a text", () => {
  it.each([
    ["can't, .669 in", ["can't", "669", "in"]],
    ["16.88 mm", ["16.88", "mm"]],
    ["player’s own-brand oil", ["player’s", "own", "brand", "oil"]],
    ["Ende. Anfang", ["Ende", "Anfang"]],
    ["Käfer über", ["Käfer", "über"]],
    ["--- ... !", []],
    ["", []],
  ])("of '%s' are %j", (text, words) => {
    expect(splitWords(text).map((word) => word.text)).toEqual(words);
  });

  it("stand where they say, one after the other, with no letter or digit between them", () => {
    fc.assert(
      fc.property(fc.oneof(fc.lorem(), fc.string({ unit: "grapheme" })), (text) => {
        let last = 0;
        for (const { text: word, start, end } of splitWords(text)) {
          expect(text.slice(start, end)).toBe(word);
          expect(text.slice(last, start)).not.toMatch(/[\p{L}\p{N}]/u);
          last = end;
        }
        expect(text.slice(last)).not.toMatch(/[\p{L}\p{N}]/u);
      }),
    );
  });
});

describe("the term that stands for a word", () => {
  it.each([
    ["Sticking", "stick"],
    ["sticks", "stick"],
    ["valve's", "valv"],
    ["valve’s", "valv"],
    ["can't", "cant"],
    ["Käfer", "kafer"],
    ["ﬁt", "fit"],
    ["16.88", "16.88"],
  ])("'%s' is '%s'", (word, term) => {
    expect(toTerm(word)).toBe(term);
  });

  it("does not change with capitals or accents", () => {
    for (const word of ["Piston", "PISTON", "pístòn"]) expect(toTerm(word)).toBe(toTerm("piston"));
  });
});
