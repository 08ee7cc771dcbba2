import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { neutralCell } from "@/lib/exchange/cells/neutralCell";
import { plainCell } from "@/lib/exchange/cells/plainCell";

describe("a cell of an exported table", () => {
  // Source: OWASP, CSV Injection: the six signs that a cell must not begin with; full width from its list of variants.
  it.each(["=", "+", "-", "@", "\t", "\r", "\uFF1D", "\uFF0B", "\uFF0D", "\uFF20"])(
    "that begins with %j gets a single quote before it",
    (sign) => {
      expect(neutralCell(`${sign}1+1`)).toBe(`'${sign}1+1`);
    },
  );

  it("is not fooled by blanks, line ends or quotes before the sign", () => {
    for (const text of [" =1", "\n=1", "'=1", "''@x", "\u00A0-1", "\n", "\0x", " \t"])
      expect(neutralCell(text)).toBe(`'${text}`);
  });

  it("stands as it is where nothing in it can begin a formula", () => {
    for (const text of ["", "valve 2", "1-2", "a=b", "'a'", "it's -5", "2026-01-01"])
      expect(neutralCell(text)).toBe(text);
  });

  it("never begins with such a sign, and gives its words back", () => {
    const text = fc.oneof(
      fc.string({ unit: "grapheme" }),
      fc.stringMatching(/^['=+\-@\t\r\n \uFF1D]{0,4}[a-z]?$/),
    );
    fc.assert(
      fc.property(text, (words) => {
        expect(neutralCell(words)).not.toMatch(/^\s*[=+\-@\t\r\uFF1D\uFF0B\uFF0D\uFF20]/);
        expect(plainCell(neutralCell(words))).toBe(words);
      }),
    );
  });
});
