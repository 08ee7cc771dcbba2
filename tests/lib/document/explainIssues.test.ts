import { describe, expect, it } from "vitest";
import { z } from "zod";
import { explainIssues } from "@/lib/document/explainIssues";

const lineOf = (path: readonly PropertyKey[]) => 10 + path.length;

function explain(
  schema: z.ZodType,
  data: unknown,
  branchOf?: (value: unknown) => number | undefined,
): string[] {
  const { error } = schema.safeParse(data);
  return explainIssues(error?.issues ?? [], data, { file: "a.md", lineOf, branchOf }).map(
    ({ line, field, received, expected }) => `${line} ${field}: ${received}; ${expected}`,
  );
}

describe("a schema's issues in plain words", () => {
  it.each([
    ["words", z.string(), ["a"], '["a"]; words'],
    ["a number for words", z.string(), 24, "24; words in quotes, such as '24'"],
    ["true for words", z.string(), true, "true; words in quotes, such as 'true'"],
    ["words for a number", z.number(), "a dozen", "'a dozen'; a number"],
    ["a broken number", z.int(), 1.5, "1.5; a whole number"],
    ["no number at all", z.number(), Number.NaN, "NaN; a number"],
    ["a number too small", z.number().min(0), -5, "-5; a number of 0 or more"],
    ["a number too big", z.number().max(4), 5, "5; a number of 4 or less"],
    ["words too short", z.string().min(3), "ab", "'ab'; at least 3 characters"],
    ["words too long", z.string().max(2), "abc", "'abc'; at most 2 characters"],
    ["a list too short", z.array(z.string()).min(2), ["a"], '["a"]; at least 2 entries'],
    ["a list too long", z.array(z.string()).max(1), ["a", "b"], '["a","b"]; at most 1 entries'],
    ["no list", z.array(z.string()), {}, "{}; a list"],
    ["no fields", z.object({}), "a", "'a'; fields under it"],
    [
      "a word that is none of the choices",
      z.enum(["open", "closed"]),
      "shut",
      "'shut'; one of: open, closed",
    ],
    ["the schema's own words for a wrong type", z.string({ error: "a day" }), 3, "3; a day"],
    ["a form of its own", z.string().regex(/^b/, "a word in b"), "a", "'a'; a word in b"],
  ])("says %s", (_, schema, value, told) => {
    expect(explain(z.object({ field: schema }), { field: value })).toEqual([`11 field: ${told}`]);
  });

  it("names what was probably meant among the choices", () => {
    expect(explain(z.object({ a: z.enum(["open", "closed"]) }), { a: "closd" })).toEqual([
      "11 a: 'closd'; 'closed' (one of: open, closed)",
    ]);
  });

  it("names the fields that are not known, at their parent", () => {
    expect(explain(z.object({ a: z.strictObject({}) }), { a: { lable: 1, rsik: 2 } })).toEqual([
      "11 a: 'lable', 'rsik'; no such field here: look for a slip in its name",
    ]);
  });

  it("comes for every issue, in the schema's order", () => {
    const schema = z.object({ a: z.number(), b: z.object({ c: z.number() }) });
    expect(explain(schema, { b: { c: "x" } })).toEqual(["11 a: nothing; a number", "12 b.c: 'x'; a number"]);
  });

  it("says once that a field is of the wrong type", () => {
    expect(explain(z.object({ a: z.string().min(3) }), { a: ["b"] })).toEqual(['11 a: ["b"]; words']);
  });
});

describe("a value that fits no branch of a union", () => {
  const schema = z.object({
    step: z.union(
      [
        z.object({ look: z.string(), found: z.string() }),
        z.object({ plug: z.object({}) }),
        z.object({ mend: z.string(), how: z.enum(["well", "ill"]), minutes: z.number() }),
      ],
      { error: "a step that looks, plugs or mends" },
    ),
  });
  const kinds = ["look", "plug", "mend"];
  const kindOf = (value: unknown) =>
    kinds.findIndex((kind) => typeof value === "object" && value !== null && kind in value);

  it("is explained by the branch that misses the fewest fields", () => {
    expect(explain(schema, { step: { mend: "a", how: "bad", minutes: "b" } })).toEqual([
      "12 step.how: 'bad'; one of: well, ill",
      "12 step.minutes: 'b'; a number",
    ]);
  });

  it("is explained by the branch with the fewest issues where as many fields are missing", () => {
    expect(explain(schema, { step: { look: 1, how: "well" } })).toEqual([
      "12 step.plug: nothing; fields under it",
    ]);
  });

  it("is explained by the branch that it means to be, where that shows", () => {
    expect(explain(schema, { step: { look: "a" } }, kindOf)).toEqual(["12 step.found: nothing; words"]);
    expect(explain(schema, { step: { mend: "a", how: "well" } }, kindOf)).toEqual([
      "12 step.minutes: nothing; a number",
    ]);
  });

  it("is told what the union takes where it shows that it is none of them", () => {
    expect(explain(schema, { step: { glue: 1 } }, kindOf)).toEqual([
      '11 step: {"glue":1}; a step that looks, plugs or mends',
    ]);
  });
});
