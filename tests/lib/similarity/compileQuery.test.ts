import { describe, expect, it } from "vitest";
import { buildCaseTable, removeRow } from "@/lib/similarity/caseTable";
import { compileQuery, NOTHING_TO_EXPECT } from "@/lib/similarity/compileQuery";
import type { Query } from "@/lib/similarity/row";
import { attributes, rows } from "./smallTable";

const table = buildCaseTable(attributes, rows);
const expectedOf = (query: Query, from = table) =>
  compileQuery(from, query).terms.map(({ expected }) => expected);

describe("the expected similarity of an unknown value", () => {
  it("is the mean over the cases that know the attribute", () => {
    expect(expectedOf({ values: { material: "brass" } })).toEqual([(1 + 0) / 2]);
    expect(expectedOf({ values: { drag: "drags" } })).toEqual([(0.5 + 0.5) / 2]);
    expect(expectedOf({ values: { stroke: 16 } })).toEqual([(1 + 0.75) / 2]);
    expect(expectedOf({ values: { part: "piston" } })).toEqual([(1 + 4 / 5) / 2]);
    expect(expectedOf({ findings: { checks: { swap: "follows-piston" } } })).toEqual([(1 + 0) / 2]);
    expect(expectedOf({ findings: { checks: { wear: "some" } } })).toEqual([0.5]);
    expect(expectedOf({ textScores: { story: Float64Array.of(0.25, Number.NaN, 0.75) } })).toEqual([0.5]);
  });

  it("is the mean over the listed values, equally, where no case knows the attribute", () => {
    const none = buildCaseTable(attributes, []);
    expect(expectedOf({ values: { material: "brass" } }, none)[0]).toBeCloseTo(1 / 3, 15);
    expect(expectedOf({ values: { drag: "free" } }, none)).toEqual([0.5]);
    expect(expectedOf({ findings: { checks: { wear: "none", swap: "follows-casing" } } }, none)).toEqual([
      0.5, 0.5,
    ]);
    expect(expectedOf({ values: { part: "valve" } }, none)[0]).toBeCloseTo(
      (1 + 2 / 3 + 2 / 3 + 1 / 2) / 4,
      15,
    );
  });

  it("is the middle where there are neither cases nor a list", () => {
    const none = buildCaseTable(attributes, []);
    expect(expectedOf({ values: { stroke: 16 }, textScores: { story: new Float64Array(0) } }, none)).toEqual([
      NOTHING_TO_EXPECT,
      NOTHING_TO_EXPECT,
    ]);
  });

  it("forgets a case that was removed", () => {
    const smaller = buildCaseTable(attributes, rows);
    removeRow(smaller, "second");
    expect(expectedOf({ values: { material: "brass", stroke: 17 } }, smaller)).toEqual([1, 0.75]);
  });
});

describe("compileQuery", () => {
  it("makes one term for each attribute and finding key known, in the order of the schema", () => {
    const { terms, totalWeight } = compileQuery(table, {
      findings: { checks: { wear: "none", swap: "follows-piston" } },
      values: { part: "valve", material: "brass", stroke: undefined },
    });
    expect(terms.map(({ kind, weight }) => [kind, weight])).toEqual([
      ["coded", 1],
      ["coded", 3],
      ["finding", 2],
      ["finding", 1],
    ]);
    expect(totalWeight).toBe(7);
  });

  it("refuses names and values that are not in the schema, and scores and likenesses outside 0..1", () => {
    expect(() => compileQuery(table, { values: { material: "tin" } })).toThrow('got "tin"');
    expect(() => compileQuery(table, { values: { colour: "red" } })).toThrow('got "colour"');
    expect(() => compileQuery(table, { findings: { tests: {} } })).toThrow('got "tests"');
    expect(() => compileQuery(table, { findings: { checks: { swap: "maybe" } } })).toThrow('got "maybe"');
    expect(() => compileQuery(table, { textScores: { part: new Float64Array(3) } })).toThrow('got "part"');
    expect(() => compileQuery(table, { textScores: { story: Float64Array.of(0, 1.5) } })).toThrow(
      "got 1.5 at row 1",
    );
    const odd = buildCaseTable(
      [{ kind: "nominal", name: "a", weight: 1, values: ["x"], alike: () => 2 }],
      [],
    );
    expect(() => compileQuery(odd, { values: { a: "x" } })).toThrow("got 2");
  });
});
