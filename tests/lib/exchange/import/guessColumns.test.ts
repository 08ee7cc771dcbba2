import { describe, expect, it } from "vitest";
import { guessColumns } from "@/lib/exchange/import/guessColumns";
import { importFields } from "@/lib/exchange/import/importField";

describe("what a column is taken as", () => {
  it("is guessed from headings as job books have them, also with a slip", () => {
    expect(
      guessColumns(["Job No.", "HORN", "Date-in", "Complant", "Diagnosis", "Hours", "Price (EUR)"]),
    ).toEqual(["id", "instrument", "received", "complaint", "cause", "hours", undefined]);
  });

  it("is each field's own name and id", () => {
    const fields = importFields.map(({ id }) => id).filter((id) => id !== "hours");
    expect(guessColumns(fields)).toEqual(fields);
    const labels = importFields.filter(({ id }) => id !== "hours").map(({ label }) => label);
    expect(guessColumns(labels)).toEqual(fields);
  });

  it("is no field twice but the story, and not both minutes and hours", () => {
    expect(guessColumns(["Problem", "Fault", "Notes", "Remarks", "Minutes", "Hours"])).toEqual([
      "complaint",
      undefined,
      "story",
      "story",
      "minutes",
      undefined,
    ]);
  });

  it("is what somebody said, also nothing; the guess for another column gives way", () => {
    const said = new Map([
      [1, "complaint" as const],
      [2, undefined],
    ]);
    expect(guessColumns(["Problem", "Fault", "Horn"], said)).toEqual([undefined, "complaint", undefined]);
  });

  it("has no two fields that share a heading", () => {
    const words = importFields.flatMap(({ id, label, words: more }) => [
      ...new Set([id, label, ...more].map((word) => word.toLowerCase())),
    ]);
    expect(words.filter((word, at) => words.indexOf(word) !== at)).toEqual([]);
  });
});
