import { describe, expect, it } from "vitest";
import type { Attribute } from "@/lib/similarity/attribute";
import { buildCaseTable, removeRow } from "@/lib/similarity/caseTable";
import { retrieve, similarities } from "@/lib/similarity/retrieve";
import type { Row } from "@/lib/similarity/row";
import { plainRetrieve } from "./plainRetrieve";
import { attributes, rows } from "./smallTable";

const table = buildCaseTable(attributes, rows);
const ids = (found: readonly { readonly id: string }[]) => found.map(({ id }) => id);

describe("retrieve", () => {
  it("ranks by the weighted mean of what the query knows, unknown counting as expected", () => {
    const query = {
      values: { material: "brass", drag: "free" },
      findings: { checks: { swap: "follows-piston" } },
    };
    // first 1, 1, 1; second 0, 0, 0; third knows none of them: .5, .5, .5, for one case of two agrees in each.
    expect(retrieve(table, query, { k: 3 })).toEqual([
      { row: 0, id: "first", similarity: 1 },
      { row: 2, id: "third", similarity: 0.5 },
      { row: 1, id: "second", similarity: 0 },
    ]);
  });

  it("weighs: (1 x 0 + 2 x 1 + 1 x .75) / 4", () => {
    const query = { values: { material: "monel", drag: "sticks", stroke: 16 } };
    expect(similarities(table, query)[1]).toBe(0.6875);
  });

  it("takes the caller's text scores", () => {
    const textScores = { story: Float64Array.of(0.25, 0.75) };
    expect([...similarities(table, { textScores })]).toEqual([0.25, 0.75, 0.5]);
  });

  it("uses the likeness of values where the schema has one", () => {
    const kinds: Attribute[] = [
      { kind: "nominal", name: "a", weight: 1, values: ["x", "y"], alike: (a, b) => (a === b ? 1 : 0.25) },
    ];
    const found = buildCaseTable(kinds, [{ id: "c", date: "2024-01-01", values: { a: "y" }, findings: {} }]);
    expect(similarities(found, { values: { a: "x" } })[0]).toBe(0.25);
  });

  it("gives 0 to all, so the newest first, when the query knows nothing or nothing that weighs", () => {
    expect(retrieve(table, {}, { k: 2 })).toEqual([
      { row: 2, id: "third", similarity: 0 },
      { row: 1, id: "second", similarity: 0 },
    ]);
    const weightless = buildCaseTable([{ kind: "nominal", name: "a", weight: 0, values: ["x"] }], []);
    expect(retrieve(weightless, { values: { a: "x" } }, { k: 2 })).toEqual([]);
  });

  it("breaks ties by the newer date, then the smaller id", () => {
    const tied = (id: string, date: string): Row => ({ id, date, values: { drag: "free" }, findings: {} });
    const ties = buildCaseTable(attributes, [
      tied("d", "2024-01-01"),
      tied("b", "2024-01-01"),
      tied("c", "2024-01-02"),
      tied("a", "2023-01-01"),
    ]);
    expect(ids(retrieve(ties, { values: { drag: "free" } }, { k: 4 }))).toEqual(["c", "b", "d", "a"]);
    expect(ids(retrieve(ties, { values: { drag: "free" } }, { k: 2 }))).toEqual(["c", "b"]);
  });

  it("ties cases that are equally alike for different reasons, whatever the last bits say", () => {
    const third = ["a", "b", "c"].map(
      (name, i): Attribute => ({
        kind: "nominal",
        name,
        weight: [0.1, 0.2, 0.3][i] ?? 0,
        values: ["yes", "no"],
      }),
    );
    const told = (id: string, a: string, b: string, c: string): Row => {
      return { id, date: "2024-01-01", values: { a, b, c }, findings: {} };
    };
    const ties = buildCaseTable(third, [told("z", "yes", "yes", "no"), told("a", "no", "no", "yes")]);
    const found = retrieve(ties, { values: { a: "yes", b: "yes", c: "yes" } }, { k: 2 });
    expect(0.1 + 0.2).not.toBe(0.3);
    expect(found.map(({ id, similarity }) => [id, similarity])).toEqual([
      ["a", 0.5],
      ["z", 0.5],
    ]);
  });

  it("finds fewer than k only when there are fewer, and none for k = 0", () => {
    expect(retrieve(table, {}, { k: 9 })).toHaveLength(3);
    expect(retrieve(table, {}, { k: 0 })).toEqual([]);
    expect(() => retrieve(table, {}, { k: -1 })).toThrow("got -1");
    expect(() => retrieve(table, {}, { k: 1.5 })).toThrow("got 1.5");
  });

  it("never finds a removed case, and similarities has 0 for it", () => {
    const smaller = buildCaseTable(attributes, rows);
    removeRow(smaller, "first");
    const query = { values: { drag: "free" } };
    expect(ids(retrieve(smaller, query, { k: 3 }))).toEqual(["third", "second"]);
    expect(similarities(smaller, query)[0]).toBe(0);
  });

  it("equals the plain implementation over many blocks of rows and more columns than one pass takes", () => {
    let state = 7;
    const below = (n: number) => {
      state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
      return Math.floor((state / 2 ** 32) * n);
    };
    const names = Array.from({ length: 11 }, (_, i) => `a${i}`);
    const many: Attribute[] = names.map((name, i) => {
      const values = Array.from({ length: i === 5 ? 400 : 7 }, (_, v) => `v${v}`);
      return { kind: "nominal", name, weight: 1 + i / 7, values };
    });
    const draw = (): Row["values"] =>
      Object.fromEntries(names.filter(() => below(8) > 0).map((name) => [name, `v${below(7)}`]));
    const drawn = Array.from({ length: 20_000 }, (_, i): Row => {
      return { id: `c${i}`, date: `20${10 + below(10)}-01-01`, values: draw(), findings: {} };
    });
    const big = buildCaseTable(many, drawn);
    for (let i = 0; i < 3; i += 1) {
      const query = { values: draw() };
      const found = retrieve(big, query, { k: 100 }).map(({ id, similarity }) => ({ id, similarity }));
      const plain = plainRetrieve(many, drawn, query).slice(0, 100);
      expect(found).toEqual(plain.map(({ id, similarity }) => ({ id, similarity })));
    }
  });
});
