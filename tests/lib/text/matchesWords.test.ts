import { describe, expect, it } from "vitest";
import { matchesWords } from "@/lib/text/matchesWords";

describe("words that are typed to find a check", () => {
  it("are each the beginning of a word of its text, in any order and in any case", () => {
    expect(matchesWords("Measure the bore", "bor MEA")).toBe(true);
    expect(matchesWords("Measure the bore", "ore")).toBe(false);
    expect(matchesWords("Measure the bore", "bore slide")).toBe(false);
  });

  it("match everything while nothing but blanks and marks is typed", () => {
    expect(matchesWords("Measure the bore", "  - ")).toBe(true);
  });
});
