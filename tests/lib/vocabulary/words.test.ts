import { describe, expect, it } from "vitest";
import { idSchema, minutesSchema, riskSchema, sourceSchema } from "@/lib/vocabulary/words";

describe("an id", () => {
  it.each(["valve", "24-001", "casing-dented", "a1-b2-c3", "x".repeat(64)])("may be '%s'", (id) => {
    expect(idSchema.safeParse(id).success).toBe(true);
  });

  it.each([
    "",
    "-a",
    "a-",
    "a--b",
    "Valve",
    "a b",
    "a_b",
    "a.b",
    "a/b",
    "..",
    "a\n",
    "a\u0000",
    "käfer",
    "x".repeat(65),
    24,
    null,
  ])("may not be %j, since it is a path segment too", (id) => {
    expect(idSchema.safeParse(id).success).toBe(false);
  });
});

describe("a number in the content", () => {
  it("of minutes lies from none to two working weeks", () => {
    const taken = [0, 0.5, 4800].filter((value) => minutesSchema.safeParse(value).success);
    const refused = [-0.1, 4800.1, Number.NaN, Number.POSITIVE_INFINITY, "5"].filter(
      (value) => minutesSchema.safeParse(value).success,
    );
    expect([taken, refused]).toEqual([[0, 0.5, 4800], []]);
  });

  it("of risk is a class from 0 to 4", () => {
    expect([-1, 0, 1, 2, 3, 4, 5, 1.5].filter((value) => riskSchema.safeParse(value).success)).toEqual([
      0, 1, 2, 3, 4,
    ]);
  });
});

describe("a source", () => {
  it("is common practice where none is named", () => {
    expect(sourceSchema.parse(undefined)).toBe("common practice");
  });
});
