import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { formatPartRef, parsePartRef, partRefSchema } from "@/lib/casebook/partRef";

describe("a part as written in a case file", () => {
  it.each([
    ["casing 2", { part: "casing", place: 2, others: false }],
    ["bell-stem", { part: "bell-stem", others: false }],
    ["other valve", { part: "valve", others: true }],
    ["other valve 1", { part: "valve", place: 1, others: true }],
    ["other", { part: "other", others: false }],
  ])("'%s' is taken apart", (text, ref) => {
    expect(parsePartRef(text)).toEqual(ref);
  });

  it.each([
    "",
    "casing 0",
    "casing 100",
    "Casing 2",
    "casing  2",
    "casing two",
    "the valve",
    "casing-",
    "valve 1 2",
  ])("'%s' is none", (text) => {
    expect(parsePartRef(text)).toBeUndefined();
    expect(partRefSchema.safeParse(text).success).toBe(false);
  });

  it("is written back as it was", () => {
    const text = fc
      .tuple(
        fc.constantFrom("", "other "),
        fc.constantFrom("valve", "bell-stem", "x1"),
        fc.constantFrom("", " 1", " 12", " 99"),
      )
      .map((parts) => parts.join(""));
    fc.assert(
      fc.property(text, (written) => {
        const ref = parsePartRef(written);
        expect(ref && formatPartRef(ref)).toBe(written);
      }),
    );
  });
});
