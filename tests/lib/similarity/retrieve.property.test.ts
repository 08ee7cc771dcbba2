import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Attribute } from "@/lib/similarity/attribute";
import { appendRow, buildCaseTable, type CaseTable, removeRow, replaceRow } from "@/lib/similarity/caseTable";
import { explainMatch } from "@/lib/similarity/explainMatch";
import { retrieve, similarities } from "@/lib/similarity/retrieve";
import type { Query, Row } from "@/lib/similarity/row";
import { plainRetrieve } from "./plainRetrieve";
import { knowledge, rowsOf, schemas } from "./randomCases";

type Change = { readonly kind: "append" | "remove" | "replace"; readonly at: number };

const changes = fc.array(
  fc.record({ kind: fc.constantFrom<Change["kind"]>("append", "remove", "replace"), at: fc.nat(40) }),
  { maxLength: 20 },
);

const worlds = schemas.chain((attributes) =>
  fc.record({
    attributes: fc.constant(attributes),
    rows: rowsOf(attributes, 30),
    spare: rowsOf(attributes, 20),
    changes,
    query: knowledge(attributes),
    // By the number in the id: NaN is an unknown score; too few scores leave the last cases unknown.
    scores: fc.array(
      fc.oneof(fc.constant(Number.NaN), fc.constantFrom(0, 0.5, 1), fc.double({ min: 0, max: 1 })),
      {
        maxLength: 40,
      },
    ),
    k: fc.integer({ min: 0, max: 40 }),
  }),
);

/** Do the changes to the table and to a plain list of rows; returns the list. */
function change(
  table: CaseTable,
  rows: readonly Row[],
  spare: readonly Row[],
  changes: readonly Change[],
): Row[] {
  const live = new Map(rows.map((row) => [row.id, row]));
  for (const [i, { kind, at }] of changes.entries()) {
    const target = [...live.keys()][at % Math.max(1, live.size)];
    const donor = spare[i];
    if (kind === "append" && donor !== undefined) {
      const row = { ...donor, id: `s${i}` };
      appendRow(table, row);
      live.set(row.id, row);
    } else if (kind === "remove" && target !== undefined) {
      removeRow(table, target);
      live.delete(target);
    } else if (kind === "replace" && target !== undefined && donor !== undefined) {
      const row = { ...donor, id: target };
      replaceRow(table, row);
      live.set(target, row);
    }
  }
  return [...live.values()];
}

function withScores(attributes: readonly Attribute[], known: Query, scores: readonly number[]): Query {
  const textNames = attributes.filter(({ kind }) => kind === "text").map(({ name }) => name);
  return {
    ...known,
    textScores: Object.fromEntries(textNames.map((name) => [name, Float64Array.from(scores)])),
  };
}

describe("retrieve against the plain reference implementation", () => {
  it("finds the same cases in the same order, whatever is unknown and whatever was appended, removed or replaced", () => {
    fc.assert(
      fc.property(worlds, ({ attributes, rows, spare, changes, query: known, scores, k }) => {
        const table = buildCaseTable(attributes, rows);
        const live = change(table, rows, spare, changes);
        const query = withScores(attributes, known, scores);
        const plain = plainRetrieve(attributes, live, query, (_, row) => {
          const score = scores[table.rowOfId.get(row.id) ?? -1];
          return score === undefined || Number.isNaN(score) ? undefined : score;
        });
        const found = retrieve(table, query, { k });
        expect(found.map(({ id, similarity }) => ({ id, similarity }))).toEqual(
          plain.slice(0, k).map(({ id, similarity }) => ({ id, similarity })),
        );
        const all = similarities(table, query);
        for (const { id, similarity, unrounded } of plain) {
          const row = table.rowOfId.get(id) ?? -1;
          expect(all[row]).toBe(similarity);
          expect(Math.abs(similarity - unrounded)).toBeLessThanOrEqual(1e-12);
        }
      }),
      { numRuns: 500 },
    );
  });

  it("leaves out the excluded row and those not included, and nothing else", () => {
    fc.assert(
      fc.property(worlds, fc.nat(30), fc.integer({ min: 1, max: 4 }), (world, exclude, step) => {
        const table = buildCaseTable(world.attributes, world.rows);
        const include = (row: number) => row % step === 0;
        const expected = plainRetrieve(world.attributes, world.rows, world.query)
          .map(({ id }) => id)
          .filter((id) => {
            const row = table.rowOfId.get(id) ?? -1;
            return row !== exclude && include(row);
          });
        const found = retrieve(table, world.query, { k: world.k, include, exclude });
        expect(found.map(({ id }) => id)).toEqual(expected.slice(0, world.k));
      }),
    );
  });
});

describe("the global similarity", () => {
  it("does not depend on the order of the rows", () => {
    fc.assert(
      fc.property(worlds, ({ attributes, rows, query }) => {
        const list = (ordered: readonly Row[]) =>
          retrieve(buildCaseTable(attributes, ordered), query, { k: 30 }).map(({ id, similarity }) => [
            id,
            similarity,
          ]);
        expect(list([...rows].reverse())).toEqual(list(rows));
      }),
    );
  });

  it("is in 0..1, and 1 between a case and itself when it knows anything that weighs", () => {
    fc.assert(
      fc.property(worlds, ({ attributes, rows }) => {
        const table = buildCaseTable(attributes, rows);
        for (const [i, row] of rows.entries()) {
          const all = similarities(table, row);
          for (const similarity of all) {
            expect(similarity).toBeGreaterThanOrEqual(0);
            expect(similarity).toBeLessThanOrEqual(1);
          }
          const weighs = explainMatch(table, row, i).some(({ weight }) => weight > 0);
          expect(all[i]).toBe(weighs ? 1 : 0);
        }
      }),
    );
  });

  it("is symmetric between cases that know everything", () => {
    const complete = schemas.chain((attributes) =>
      fc.record({ attributes: fc.constant(attributes), rows: rowsOf(attributes, 6, true) }),
    );
    fc.assert(
      fc.property(complete, ({ attributes, rows }) => {
        const table = buildCaseTable(attributes, rows);
        const matrix = rows.map((row) => similarities(table, row));
        for (const [i, similaritiesOfI] of matrix.entries()) {
          for (const [j, similarity] of similaritiesOfI.entries()) expect(matrix[j]?.[i]).toBe(similarity);
        }
      }),
    );
  });

  it("is the sum of the shares that explain it, and what the query does not know has none", () => {
    fc.assert(
      fc.property(worlds, ({ attributes, rows, spare, changes, query: known, scores }) => {
        const table = buildCaseTable(attributes, rows);
        change(table, rows, spare, changes);
        const query = withScores(attributes, known, scores);
        const all = similarities(table, query);
        for (const row of table.rowOfId.values()) {
          const shares = explainMatch(table, query, row);
          const sum = shares.reduce((total, { share }) => total + share, 0);
          expect(Math.abs(sum - (all[row] ?? Number.NaN))).toBeLessThanOrEqual(5.01e-13);
          for (const { verdict, share, queryValue } of shares) {
            if (verdict !== "unknown-in-query") continue;
            expect(share).toBe(0);
            expect(queryValue).toBeUndefined();
          }
        }
      }),
    );
  });
});
