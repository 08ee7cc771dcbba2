import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { paretoRows } from "@/lib/patterns/paretoRows";

describe("the rows of a Pareto chart", () => {
  it("stand by falling count, ties by name, with the running share", () => {
    const counts = new Map([
      ["pads", 2],
      ["cork", 5],
      ["dents", 2],
      ["springs", 1],
    ]);
    // Of 10: 5, then 7, 9 and 10.
    expect(paretoRows(counts)).toEqual([
      { value: "cork", count: 5, running: 0.5 },
      { value: "dents", count: 2, running: 0.7 },
      { value: "pads", count: 2, running: 0.9 },
      { value: "springs", count: 1, running: 1 },
    ]);
  });

  it("keep every count, never rise, and end at all of it", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), fc.integer({ min: 1, max: 99 })), (counts) => {
        const entries = Object.entries(counts);
        const rows = paretoRows(new Map(entries));
        expect(new Map(rows.map(({ value, count }) => [value, count]))).toEqual(new Map(entries));
        rows.reduce((before, { count }) => {
          expect(count).toBeLessThanOrEqual(before);
          return count;
        }, Number.POSITIVE_INFINITY);
        expect(rows.at(-1)?.running ?? 1).toBe(1);
      }),
    );
  });

  it("are none where nothing was counted", () => {
    expect(paretoRows(new Map())).toEqual([]);
  });
});
