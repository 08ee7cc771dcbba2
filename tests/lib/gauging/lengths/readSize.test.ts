import { describe, expect, it } from "vitest";
import { readSize } from "../../../../lib/gauging/lengths/readSize";
import { sizeFlag } from "../../../../lib/gauging/lengths/sizeFlag";
import { splitLengths } from "../../../../lib/gauging/lengths/splitLengths";

const offers = (
  text: string,
  ...rest: Parameters<typeof readSize> extends [string, ...infer R] ? R : never
) => {
  const read = readSize(text, ...rest);
  if (read.kind !== "question") throw new Error(`${text}: ${read.kind}`);
  return read.could.map(({ write }) => write);
};

describe("readSize", () => {
  it("asks about a size that cannot be, even where its unit was written", () => {
    expect(offers("16.88 in", "diameter")).toEqual(["16.88 mm"]);
    expect(offers("17.02 in", "diameter")).toEqual(["17.02 mm"]);
    expect(offers(".669 mm", "diameter")).toEqual([".669 in"]);
    expect(offers("669 in", "diameter")).toEqual(["669 thou"]);
  });

  it("asks about a number without a unit, and offers only what it can be", () => {
    expect(offers("16.88", "diameter")).toEqual(["16.88 mm"]);
    expect(offers("16.88", "diameter", "inch")).toEqual(["16.88 mm"]);
    expect(offers("669", "diameter")).toEqual(["669 thou"]);
  });

  it("offers nothing where no unit makes sense of it", () => {
    expect(offers("0", "diameter")).toEqual([]);
    expect(sizeFlag(readSize("0", "diameter"))).toContain("measure again");
  });

  it("takes a plain size, and a decimal comma", () => {
    expect(readSize("16,88 mm", "diameter")).toEqual({ kind: "length", mm: 16.88 });
    expect(readSize(".669", "diameter")).toEqual({ kind: "length", mm: 16.9926 });
  });

  it("holds an uncertainty to ten thou, and lets it be none", () => {
    expect(readSize(".0001 in", "uncertainty")).toEqual({ kind: "length", mm: 0.00254 });
    expect(readSize("0 mm", "uncertainty")).toEqual({ kind: "length", mm: 0 });
    expect(readSize(".1 in", "uncertainty").kind).toBe("question");
  });

  it("says in one line what was found and what to write", () => {
    expect(sizeFlag(readSize("16.88 in", "diameter"), "at 30 degrees")).toBe(
      "implausible unit: at 30 degrees '16.88 in': that is 428.752 mm, too much for a bore, plug or piston; write 16.88 mm",
    );
    expect(sizeFlag(readSize("wide", "diameter"))).toContain("unreadable: 'wide'");
    expect(sizeFlag(readSize(".669 in", "diameter"))).toBeUndefined();
  });
});

describe("splitLengths", () => {
  it.each([
    [".669 .671", [".669", ".671"]],
    [".669 in, .671 in", [".669 in", ".671 in"]],
    ["16,88 16,90 mm", ["16,88", "16,90 mm"]],
    ["16,88; 16,90", ["16,88", "16,90"]],
    ["1 1/4 in; 2", ["1 1/4 in", "2"]],
    ["  ", []],
  ])("parts %j", (text, lengths) => {
    expect(splitLengths(text)).toEqual(lengths);
  });
});
