import { describe, expect, it } from "vitest";
import { buildCaseTable, removeRow } from "@/lib/similarity/caseTable";
import { compileQuery } from "@/lib/similarity/compileQuery";
import { explainMatch } from "@/lib/similarity/explainMatch";
import { retrieve } from "@/lib/similarity/retrieve";
import { attributes, rows } from "./smallTable";

const table = buildCaseTable(attributes, rows);

describe("explainMatch", () => {
  it("says what agreed, was near, differed or was unknown on either side, with shares of the score", () => {
    const query = {
      values: { drag: "drags", stroke: 16, part: "casing" },
      findings: { checks: { swap: "follows-casing", wear: "some" } },
      textScores: { story: Float64Array.of(0.2, 0.9, 0.4) },
    };
    // Weights known to the query: 2 + 1 + 3 + 2 + 1 + 1 = 10.
    expect(explainMatch(table, query, 1)).toEqual([
      {
        attribute: "drag",
        weight: 2,
        similarity: 0.5,
        share: expect.closeTo(0.1, 15),
        verdict: "near",
        queryValue: "drags",
        caseValue: "sticks",
      },
      {
        attribute: "stroke",
        weight: 1,
        similarity: 0.75,
        share: expect.closeTo(0.075, 15),
        verdict: "near",
        queryValue: 16,
        caseValue: { low: 17, high: 19 },
      },
      // Expected: piston 1/2 and spring 2/5 are known.
      {
        attribute: "part",
        weight: 3,
        similarity: expect.closeTo(0.45, 15),
        share: expect.closeTo(0.135, 15),
        verdict: "unknown-in-case",
        queryValue: "casing",
      },
      {
        attribute: "checks",
        key: "swap",
        weight: 2,
        similarity: 1,
        share: expect.closeTo(0.2, 15),
        verdict: "agrees",
        queryValue: "follows-casing",
        caseValue: "follows-casing",
      },
      {
        attribute: "checks",
        key: "wear",
        weight: 1,
        similarity: 0.5,
        share: expect.closeTo(0.05, 15),
        verdict: "unknown-in-case",
        queryValue: "some",
      },
      { attribute: "story", weight: 1, similarity: 0.9, share: expect.closeTo(0.09, 15), verdict: "near" },
      {
        attribute: "material",
        weight: 1,
        similarity: 0,
        share: 0,
        verdict: "unknown-in-query",
        caseValue: "nickel",
      },
    ]);
  });

  it("lists a finding that the query did not ask about", () => {
    const unasked = explainMatch(table, { findings: { checks: { swap: "follows-casing" } } }, 0);
    expect(unasked.map(({ attribute, key, verdict }) => [attribute, key, verdict])).toEqual([
      ["checks", "swap", "differs"],
      ["material", undefined, "unknown-in-query"],
      ["drag", undefined, "unknown-in-query"],
      ["stroke", undefined, "unknown-in-query"],
      ["part", undefined, "unknown-in-query"],
      ["checks", "wear", "unknown-in-query"],
    ]);
  });

  it("calls two parts different that share only the root, near when one stands under the other", () => {
    const verdict = (part: string, row: number) => explainMatch(table, { values: { part } }, row)[0]?.verdict;
    expect(verdict("casing", 0)).toBe("differs");
    expect(verdict("valve", 0)).toBe("near");
    expect(verdict("piston", 2)).toBe("near");
    expect(verdict("piston", 0)).toBe("agrees");
  });

  it("gives only what the case knows, at share 0, for a query that knows nothing", () => {
    expect(explainMatch(table, {}, 2)).toEqual([
      {
        attribute: "part",
        weight: 3,
        similarity: 0,
        share: 0,
        verdict: "unknown-in-query",
        caseValue: "spring",
      },
    ]);
  });

  it("says the same of every row by a query that was compiled once, and so does the retrieval", () => {
    const query = {
      values: { drag: "drags", stroke: 16, part: "casing" },
      findings: { checks: { swap: "follows-casing", wear: "some" } },
      textScores: { story: Float64Array.of(0.2, 0.9, 0.4) },
    };
    const compiled = compileQuery(table, query);
    for (const row of [0, 1, 2]) {
      expect(explainMatch(table, query, row, compiled)).toEqual(explainMatch(table, query, row));
    }
    expect(retrieve(table, query, { k: 3, compiled })).toEqual(retrieve(table, query, { k: 3 }));
  });

  it("refuses a row that is not in the table", () => {
    const smaller = buildCaseTable(attributes, rows);
    removeRow(smaller, "first");
    expect(() => explainMatch(smaller, {}, 0)).toThrow("got 0");
    expect(() => explainMatch(smaller, {}, 3)).toThrow("got 3");
  });
});
