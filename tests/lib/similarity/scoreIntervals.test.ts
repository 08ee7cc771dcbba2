import fc from "fast-check";
import { expect, it } from "vitest";
import { buildCaseTable } from "@/lib/similarity/caseTable";
import { numericSimilarity } from "@/lib/similarity/measures/numericSimilarity";
import { scoreIntervals } from "@/lib/similarity/scoreIntervals";

const bound = fc.double({ min: -100, max: 100, noNaN: true });
const interval = fc.tuple(bound, bound).map(([a, b]) => ({ low: Math.min(a, b), high: Math.max(a, b) }));

it("the fast scan of finite intervals gives the same bits as the measure itself", () => {
  fc.assert(
    fc.property(
      fc.array(interval),
      interval,
      fc.double({ min: 0.01, max: 300, noNaN: true }),
      (cases, query, tolerance) => {
        const table = buildCaseTable(
          [{ kind: "numeric", name: "n", weight: 1, tolerance }],
          cases.map((n, i) => ({ id: `${i}`, date: "2024-01-01", values: { n }, findings: {} })),
        );
        const column = table.columns.get("n");
        if (column?.kind !== "numeric") throw new Error("n is numeric");
        expect([...scoreIntervals(column, query, cases.length)]).toEqual(
          cases.map(({ low, high }) => numericSimilarity(query.low, query.high, low, high, tolerance)),
        );
      },
    ),
  );
});
