import { describe, expect, it } from "vitest";
import type { Attribute } from "@/lib/similarity/attribute";
import { buildCaseTable, removeRow } from "@/lib/similarity/caseTable";
import { retrieve, similarities } from "@/lib/similarity/retrieve";
import type { Query, Row } from "@/lib/similarity/row";
import { plainRetrieve } from "./plainRetrieve";

const values = ["a", "b", "c"];
const many = Array.from({ length: 300 }, (_, at) => `v${at}`);
const attributes: readonly Attribute[] = [
  // Five columns of one byte a row: four are scored in one pass, the fifth by itself.
  ...[1, 2, 3, 0.7, 0.1].map(
    (weight, at): Attribute => ({ kind: "nominal", name: `n${at}`, weight, values }),
  ),
  { kind: "nominal", name: "wide", weight: 0.3, values: many },
  { kind: "numeric", name: "number", weight: 0.9, tolerance: 7 },
  {
    kind: "findings",
    name: "found",
    keys: [{ key: "k", weight: 1.3, outcomes: ["yes", "no"], ordered: false }],
  },
  { kind: "text", name: "text", weight: 1.1 },
];
const count = 20_001;
const rows = Array.from(
  { length: count },
  (_, at): Row => ({
    id: `r${at}`,
    date: `2024-01-${String(1 + (at % 28)).padStart(2, "0")}`,
    values: {
      ...Object.fromEntries([5, 7, 11, 13, 17].map((step, i) => [`n${i}`, values[(at % step) % 4]])),
      wide: many[at % 301],
      number: at % 19 === 0 ? undefined : at % 23,
    },
    findings: { found: at % 3 === 0 ? { k: at % 2 === 0 ? "yes" : "no" } : {} },
  }),
);
// Scores of a part of the rows only: the others' text is unknown.
const scores = Float64Array.from({ length: 18_000 }, (_, at) => (at % 97) / 97);
const query: Query = {
  values: { n0: "a", n1: "b", n2: "c", n3: "a", n4: "b", wide: "v7", number: 9 },
  findings: { found: { k: "yes" } },
  textScores: { text: scores },
};

describe("rows that take several blocks", () => {
  it("are scored as the plain way scores them, the last block's and the removed one's neighbours too", () => {
    const table = buildCaseTable(attributes, rows);
    removeRow(table, "r8191");
    const live = rows.filter(({ id }) => id !== "r8191");
    const plain = plainRetrieve(attributes, live, query, (_, { id }) => scores[Number(id.slice(1))]);
    const all = similarities(table, query);
    expect(plain.every(({ id, similarity }) => all[Number(id.slice(1))] === similarity)).toBe(true);
    expect(all[8191]).toBe(0);
    const found = retrieve(table, query, { k: 500 }).map(({ id, similarity }) => ({ id, similarity }));
    expect(found).toEqual(plain.slice(0, 500).map(({ id, similarity }) => ({ id, similarity })));
  });
});
