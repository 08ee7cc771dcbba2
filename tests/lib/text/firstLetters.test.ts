import { describe, expect, it } from "vitest";
import { lowerFirst } from "@/lib/text/lowerFirst";
import { upperFirst } from "@/lib/text/upperFirst";

describe("the first letter of words", () => {
  it("is small within a sentence, the others left as they are", () => {
    expect(lowerFirst("Casing 3 binds")).toBe("casing 3 binds");
    expect(lowerFirst("Throat A leaks")).toBe("throat A leaks");
  });

  it("stays a capital where it names a note, a shape or a people", () => {
    for (const name of ["G sharp key bent", "U bow loose", "English horn"])
      expect(lowerFirst(name)).toBe(name);
    expect(lowerFirst("A crack")).toBe("a crack");
  });

  it("is a capital where a sentence begins, the others left as they are", () => {
    expect(upperFirst("casing 3 binds with piston A")).toBe("Casing 3 binds with piston A");
  });

  it("is nothing of nothing", () => {
    expect(lowerFirst("")).toBe("");
    expect(upperFirst("")).toBe("");
  });
});
