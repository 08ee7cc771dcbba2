import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { showValue } from "@/lib/document/showValue";

describe("a value in an error text", () => {
  it.each([
    [undefined, "nothing"],
    [null, "nothing"],
    ["", "''"],
    ["a dozen", "'a dozen'"],
    [-5, "-5"],
    [Number.NaN, "NaN"],
    [false, "false"],
    [["a", 1], '["a",1]'],
    ["two\r\nlines\tand\u0000more", "'two lines and more'"],
    ["left\u2028right\u0085end", "'left right end'"],
  ])("%o is shown as %s", (value, shown) => {
    expect(showValue(value)).toBe(shown);
  });

  it("may hold a whole number too long for JSON", () => {
    expect(showValue({ a: 10n })).toBe('{"a":"10"}');
  });

  it("is at most 60 characters long, and ends in an ellipsis where it was cut", () => {
    expect(showValue("x".repeat(58))).toBe(`'${"x".repeat(58)}'`);
    expect(showValue("x".repeat(59))).toBe(`'${"x".repeat(58)}…`);
  });

  it("is one short line whatever it is", () => {
    fc.assert(
      fc.property(fc.anything({ withBigInt: true }), (value) => {
        const shown = showValue(value);
        expect(shown.length).toBeLessThanOrEqual(60);
        expect(shown).not.toMatch(/\p{Cc}/u);
      }),
    );
  });
});
