import { describe, expect, it } from "vitest";
import { appendRow, buildCaseTable, isLive, removeRow, replaceRow } from "@/lib/similarity/caseTable";
import { attributes, rows } from "./smallTable";

const build = () => buildCaseTable(attributes, rows);
const empty = { values: {}, findings: {} };

describe("buildCaseTable", () => {
  it("holds values as codes from 1 with 0 for unknown, and counts them", () => {
    const material = build().columns.get("material");
    if (material?.kind !== "coded") throw new Error("material is coded");
    expect([...material.codes]).toEqual([1, 2, 0]);
    expect([...material.counts]).toEqual([0, 1, 1, 0]);
  });

  it("holds numbers as bounds, NaN for unknown", () => {
    const stroke = build().columns.get("stroke");
    if (stroke?.kind !== "numeric") throw new Error("stroke is numeric");
    expect([...stroke.low]).toEqual([16, 17, Number.NaN]);
    expect([...stroke.high]).toEqual([16, 19, Number.NaN]);
    expect(stroke.knownCount).toBe(2);
  });

  it("holds findings as posting lists of the rows that know the key", () => {
    const checks = build().columns.get("checks");
    if (checks?.kind !== "findings") throw new Error("checks are findings");
    const swap = checks.postings.get("swap");
    expect([...(swap?.rows.subarray(0, swap.length) ?? [])]).toEqual([0, 1]);
    expect([...(swap?.outcomes.subarray(0, swap.length) ?? [])]).toEqual([1, 2]);
    expect(checks.postings.get("wear")?.length).toBe(1);
  });

  it("takes two bytes a row for more than 255 values", () => {
    const values = Array.from({ length: 256 }, (_, i) => `v${i}`);
    const table = buildCaseTable(
      [{ kind: "nominal", name: "a", weight: 1, values }],
      [{ id: "x", date: "2024-01-01", values: { a: "v255" }, findings: {} }],
    );
    const column = table.columns.get("a");
    if (column?.kind !== "coded") throw new Error("a is coded");
    expect(column.codes).toBeInstanceOf(Uint16Array);
    expect(column.codes[0]).toBe(256);
  });

  it("names the case and what is wrong with it", () => {
    const bad = (values: Record<string, string | number>, checks: Record<string, string> = {}) =>
      buildCaseTable(attributes, [{ id: "bad", date: "2024-01-01", values, findings: { checks } }]);
    expect(() => bad({ material: "tin" })).toThrow(
      'case "bad": "material" must be one of its values; got "tin"',
    );
    expect(() => bad({ stroke: "long" })).toThrow('"stroke" must be a finite number or an interval');
    expect(() => bad({ stroke: Number.NaN })).toThrow('"stroke" must be a finite number or an interval');
    expect(() => bad({ colour: "red" })).toThrow('got "colour"');
    expect(() => bad({ story: "sticks" })).toThrow('got "story"');
    expect(() => bad({}, { smell: "burnt" })).toThrow('got "smell"');
    expect(() => bad({}, { wear: "awful" })).toThrow('"wear" must be one of none, some, much; got "awful"');
    expect(() => buildCaseTable(attributes, [...rows, ...rows])).toThrow('got "first" again');
  });

  it("refuses a bad schema with everything that is wrong with it", () => {
    const build = () =>
      buildCaseTable(
        [
          { kind: "nominal", name: "a", weight: -1, values: ["x", "x"] },
          { kind: "numeric", name: "a", weight: 1, tolerance: 0 },
          { kind: "ordinal", name: "b", weight: 1, ranks: [] },
        ],
        [],
      );
    for (const problem of [
      "weigh 0 or more; got -1",
      '"x" twice',
      "tolerance over 0",
      '"a" twice',
      "got 0",
    ]) {
      expect(build).toThrow(problem);
    }
  });

  it("takes an attribute named like a property of every object as any other", () => {
    const table = buildCaseTable(
      [{ kind: "nominal", name: "constructor", weight: 1, values: ["a"] }],
      [{ id: "x", date: "2024-01-01", ...empty }],
    );
    expect(table.rowCount).toBe(1);
  });
});

describe("changing a table", () => {
  it("appends behind the last row, past the capacity too", () => {
    const table = build();
    for (let i = 0; i < 40; i += 1) {
      expect(
        appendRow(table, { id: `new-${i}`, date: "2024-04-01", values: { drag: "drags" }, findings: {} }),
      ).toBe(3 + i);
    }
    const drag = table.columns.get("drag");
    if (drag?.kind !== "coded") throw new Error("drag is coded");
    expect([...drag.counts]).toEqual([0, 1, 40, 1]);
    expect(drag.codes[42]).toBe(2);
    const stroke = table.columns.get("stroke");
    if (stroke?.kind !== "numeric") throw new Error("stroke is numeric");
    expect(stroke.low[42]).toBeNaN();
  });

  it("takes a removed row's values out of every count and does not give its number out again", () => {
    const table = build();
    expect(removeRow(table, "first")).toBe(0);
    expect(isLive(table, 0)).toBe(false);
    const material = table.columns.get("material");
    const checks = table.columns.get("checks");
    if (material?.kind !== "coded" || checks?.kind !== "findings") throw new Error("kinds are fixed");
    expect([...material.counts]).toEqual([0, 0, 1, 0]);
    expect([...(checks.postings.get("swap")?.counts ?? [])]).toEqual([0, 0, 1]);
    expect(material.codes[0]).toBe(0);
    expect(checks.postings.get("swap")?.outcomes[0]).toBe(0);
    expect(appendRow(table, { id: "first", date: "2024-05-01", ...empty })).toBe(3);
    expect(() => removeRow(table, "nobody")).toThrow('got "nobody"');
  });

  it("leaves the table as it was when the row that should come in is bad", () => {
    const table = build();
    const before = structuredClone({ ...table, attributes: [], columns: [] });
    const bad = {
      id: "second",
      date: "2024-05-01",
      values: { material: "brass", drag: "never" },
      findings: {},
    };
    expect(() => replaceRow(table, bad)).toThrow('got "never"');
    expect(() => appendRow(table, { ...bad, id: "fourth" })).toThrow('got "never"');
    expect(() => replaceRow(table, { ...bad, id: "fourth", values: {} })).toThrow('got "fourth"');
    expect(structuredClone({ ...table, attributes: [], columns: [] })).toEqual(before);
    const material = table.columns.get("material");
    if (material?.kind !== "coded") throw new Error("material is coded");
    expect([...material.counts]).toEqual([0, 1, 1, 0]);
  });
});
