import { parse } from "csv-parse/sync";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { type Case, caseFieldsSchema, caseSchema } from "@/lib/casebook/caseFile";
import { readCase } from "@/lib/casebook/readCase";
import { casebookCsv } from "@/lib/exchange/copies/casebookCsv";
import { casebookJson } from "@/lib/exchange/copies/casebookJson";
import { leftRowsCsv } from "@/lib/exchange/rows/leftRowsCsv";
import { publishSchemas } from "@/lib/publishing/publishSchemas";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { anyFields, anyStory } from "../casebook/anyCase";
import { planText } from "./importing";

const formulas = ["=1+1", "+cmd|' /C calc'!A0", "-2+3", "@SUM(1)", "\t=1", "'=x", '="a","b"', 'a;b,c"d'];
const words = fc
  .oneof(fc.constantFrom(...formulas), fc.string({ unit: "grapheme", maxLength: 30 }))
  .map((text) => text.replaceAll(/[\0\r]/g, "").trim());
const line = words.map((text) => text.replaceAll("\n", " ").trim()).filter((text) => text !== "");
const title = line.map((text) => `abc ${text}`.trim());
const amount = fc.nat({ max: 4_000_000 }).map((thousandths) => thousandths / 1000);
const day = fc.constantFrom("2019-04-03", "2019-04-04", "2020-02-29");

/** A finished case that says no more than a row of a table can. */
const tabled = fc
  .record({
    title,
    instrument: fc.constantFrom("cornet", "euphonium"),
    maker: line,
    model: fc.option(line, { nil: undefined }),
    received: day,
    complaint: fc
      .string({ unit: "grapheme", maxLength: 5 })
      .map((text) => `x${text}`.replaceAll(/[\0\r]/g, "").trim()),
    arrival: fc.array(line, { maxLength: 2 }),
    lessons: fc.array(line, { maxLength: 2 }),
    cause: fc.constantFrom("gummed-oil", "casing-dented"),
    part: fc.option(fc.constantFrom("valve 1", "casing 3"), { nil: undefined }),
    outcome: fc.constantFrom("fixed" as const, "improved" as const, "not-fixed" as const),
    minutes: amount,
    quoted: fc.option(fc.record({ minutes: amount, price: amount }), { nil: undefined }),
    charge: fc.option(amount, { nil: undefined }),
    story: anyStory.map((text) => text.replaceAll(/[\r\0\uFEFF]/g, "").trim()),
  })
  .map(({ cause, part, story, ...fields }) => ({
    story,
    fields: {
      ...fields,
      closed: "2021-01-01",
      status: "closed",
      causes: [{ cause, ...(part ? { part } : {}), role: "root" }],
    },
  }));

const casesOf = (all: readonly Readonly<{ story: string; fields: object }>[]): Case[] =>
  all.flatMap(({ story, fields }, at) => {
    const parsed = caseSchema.safeParse({ ...fields, id: `19-${String(at + 1).padStart(3, "0")}` });
    return parsed.success ? [{ ...parsed.data, story, file: "" }] : [];
  });

describe("a casebook as a table", () => {
  it("is taken in again as the cases that it was made from, formulas and all, as far as a row goes", () => {
    fc.assert(
      fc.property(fc.array(tabled, { minLength: 1, maxLength: 5 }), (all) => {
        const cases = casesOf(all);
        fc.pre(cases.length > 0);
        const { ready, refused } = planText(casebookCsv(cases));
        expect(refused).toEqual([]);
        const again = ready.map(({ text }) => readCase(text, "", smallVocabulary).case);
        expect(again).toEqual(
          cases.map((kase) => ({
            ...kase,
            minutes: round(kase.minutes),
            quoted: kase.quoted && { ...kase.quoted, minutes: round(kase.quoted.minutes) },
          })),
        );
      }),
      { numRuns: 150 },
    );
  });

  it("has no cell that a spreadsheet takes for a formula, every cell quoted, a row a case by id", () => {
    // Source: OWASP, CSV Injection; the payloads are its own and those of CWE-1236.
    const cases = formulas.map((formula, at) =>
      makeCase({
        id: `24-00${9 - at}`,
        title: `a ${formula}`,
        maker: formula,
        complaint: formula,
        lessons: [formula],
        story: formula,
      }),
    );
    const text = casebookCsv(cases);
    const rows = z.array(z.array(z.string())).parse(parse(text, { bom: true }));
    expect(rows.slice(1).map(([id]) => id)).toEqual(cases.map(({ id }) => id).sort());
    expect(rows.flat().filter((cell) => /^[=+\-@\t\r]/.test(cell))).toEqual([]);
    expect(text.startsWith('\uFEFF"Job number",')).toBe(true);
    expect(
      text
        .split("\r\n")
        .slice(1, -1)
        .every((row) => /^".*"$/.test(row)),
    ).toBe(true);
  });

  it("of rows that were left out can be brought in again", () => {
    const text = leftRowsCsv(["Horn", "Problem"], [{ cells: ["violin", '=1+1, "loud"'] }]);
    expect(planText(text).refused).toMatchObject([{ line: 2, cells: ["violin", '=1+1, "loud"'] }]);
    expect(leftRowsCsv(["Horn"], [])).toBe("");
  });
});

describe("a casebook as data", () => {
  const schema = z.fromJSONSchema(
    z.record(z.string(), z.json()).parse(publishSchemas(smallVocabulary).get("case")),
  );

  it("holds every case whole and by its published schema, and comes back from JSON as it was", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(anyFields, anyStory), { maxLength: 4 }), (all) => {
        const cases = all.map(
          ([fields, story]): Case => ({ ...caseFieldsSchema.parse(fields), story, file: "a.md" }),
        );
        const { cases: told } = casebookJson(cases);
        for (const one of told) expect(schema.safeParse(one).success).toBe(true);
        expect(new Set(told.map(({ id }) => id))).toEqual(new Set(cases.map(({ id }) => id)));
        for (const kase of cases) expect(told).toContainEqual({ ...kase, file: undefined });
      }),
      { numRuns: 60 },
    );
  });

  it("is the same text whatever order the cases were loaded in", () => {
    const cases = ["24-002", "24-001", "23-100"].map((id) => makeCase({ id }));
    const text = JSON.stringify(casebookJson(cases));
    expect(JSON.stringify(casebookJson(cases.toReversed()))).toBe(text);
    expect(casebookJson(cases).cases.map(({ id }) => id)).toEqual(["23-100", "24-001", "24-002"]);
  });
});

/** Minutes are read to the hundredth. */
function round(minutes: number | undefined): number | undefined {
  return minutes === undefined ? undefined : Math.round(100 * minutes) / 100;
}
