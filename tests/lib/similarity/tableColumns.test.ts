import { describe, expect, it } from "vitest";
import type { Attribute } from "@/lib/similarity/attribute";
import { appendRow, buildCaseTable, removeRow } from "@/lib/similarity/caseTable";
import { retrieve } from "@/lib/similarity/retrieve";
import type { Row } from "@/lib/similarity/row";
import { layTable, takeUpTable } from "@/lib/similarity/tableColumns";

const attributes: readonly Attribute[] = [
  { kind: "nominal", name: "part", weight: 1, values: ["valve", "slide"] },
  { kind: "nominal", name: "model", weight: 1, values: Array.from({ length: 300 }, (_, at) => `m-${at}`) },
  { kind: "numeric", name: "wear", weight: 2, tolerance: 0.01 },
  {
    kind: "findings",
    name: "checks",
    keys: ["travel", "spring"].map((key) => ({ key, weight: 1, outcomes: ["good", "bad"], ordered: true })),
  },
  { kind: "text", name: "words", weight: 1 },
];
const rows: readonly Row[] = [
  {
    id: "a",
    date: "2024-01-01",
    values: { part: "valve", wear: 0.002 },
    findings: { checks: { travel: "bad" } },
  },
  {
    id: "b",
    date: "2024-02-01",
    values: { model: "m-299", wear: { low: 0.001, high: Number.POSITIVE_INFINITY } },
    findings: { checks: { travel: "good", spring: "bad" } },
  },
  { id: "c", date: "2024-03-01", values: {}, findings: {} },
];
const again = () => takeUpTable(attributes, layTable(buildCaseTable(attributes, rows)));

describe("a table laid out and taken up again", () => {
  it("is the one that the rows would make", () => {
    const { ids, dates, columns } = layTable(buildCaseTable(attributes, rows));
    const table = takeUpTable(attributes, { ids, dates, columns });
    expect(layTable(table)).toEqual({ ids, dates, columns });
    for (const [name, column] of buildCaseTable(attributes, rows).columns) {
      const taken = table.columns.get(name);
      if (column.kind === "coded" && taken?.kind === "coded") expect(taken.counts).toEqual(column.counts);
      if (column.kind === "numeric" && taken?.kind === "numeric") {
        expect([taken.knownCount, taken.hasOpen]).toEqual([column.knownCount, column.hasOpen]);
      }
      if (column.kind === "findings" && taken?.kind === "findings") {
        for (const [key, { counts }] of column.postings)
          expect(taken.postings.get(key)?.counts).toEqual(counts);
      }
    }
  });

  it("finds the same, and goes on taking rows in and out", () => {
    const query = { values: { part: "valve", wear: 0.003 }, findings: { checks: { spring: "bad" } } };
    const [taken, built] = [again(), buildCaseTable(attributes, rows)];
    expect(retrieve(taken, query, { k: 3 })).toEqual(retrieve(built, query, { k: 3 }));
    for (const table of [taken, built]) {
      removeRow(table, "a");
      appendRow(table, {
        id: "d",
        date: "2024-04-01",
        values: { part: "valve" },
        findings: { checks: { spring: "bad" } },
      });
    }
    expect(retrieve(taken, query, { k: 3 })).toEqual(retrieve(built, query, { k: 3 }));
  });

  it("is refused where rows were removed, or arrays are missing or too short", () => {
    const table = buildCaseTable(attributes, rows);
    const { columns, ...rest } = layTable(table);
    expect(() => takeUpTable(attributes, { ...rest, columns: columns.slice(1) })).toThrow("must be");
    expect(() =>
      takeUpTable(attributes, { ...rest, columns: columns.map((one) => one.slice(0, 1)) }),
    ).toThrow();
    removeRow(table, "a");
    expect(() => layTable(table)).toThrow("got 1");
  });
});
