import { describe, expect, it } from "vitest";
import { lowerFirst } from "@/lib/text/lowerFirst";
import { upperFirst } from "@/lib/text/upperFirst";

describe("the first letter of words", () => {
  it("is small within a sentence, the others left as they are", () => {
    expect(lowerFirst("G sharp key bent")).toBe("g sharp key bent");
    expect(lowerFirst("Throat A leaks")).toBe("throat A leaks");
  });

  it("is a capital where a sentence begins, the others left as they are", () => {
    expect(upperFirst("casing 3 binds with piston A")).toBe("Casing 3 binds with piston A");
  });

  it("is nothing of nothing", () => {
    expect(lowerFirst("")).toBe("");
    expect(upperFirst("")).toBe("");
  });
});
