import { describe, expect, it } from "vitest";
import { rememberWords } from "@/lib/text/rememberWords";

const counted = () => {
  const asked: string[] = [];
  const read = rememberWords((word) => {
    asked.push(word);
    return word === "the" ? null : word.toUpperCase();
  });
  return { asked, read };
};

describe("a function that remembers words", () => {
  it("works a word out once, and gives the same each time, nothing included", () => {
    const { asked, read } = counted();
    expect(["a", "the", "a", "the"].map(read)).toEqual(["A", null, "A", null]);
    expect(asked).toEqual(["a", "the"]);
  });

  it("does not keep words too long to come again", () => {
    const { asked, read } = counted();
    const long = "x".repeat(41);
    expect([read(long), read(long)]).toEqual([long.toUpperCase(), long.toUpperCase()]);
    expect(asked).toEqual([long, long]);
  });

  it("starts anew rather than grow without end", () => {
    const { asked, read } = counted();
    for (let at = 0; at <= 100_000; at += 1) read(`w${at}`);
    expect(read("w0")).toBe("W0");
    expect(read("w100000")).toBe("W100000");
    expect(asked.length).toBe(100_002);
  });
});
