import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { learnPosterior } from "@/lib/diagnosis/learned/learnedPosterior";
import { seededRandom } from "@/lib/diagnosis/learned/seededRandom";
import type { Feature, LabelledRows } from "@/lib/similarity/learned/feature";

const coded = (name: string, codes: readonly number[], valueCount: number): Feature => ({
  kind: "coded",
  name,
  valueCount,
  codes: Int32Array.from(codes),
});
const all = ({ labels }: LabelledRows) => Int32Array.from(labels, (_, row) => row);

function answers(data: LabelledRows, train: Int32Array) {
  return learnPosterior(data, train, seededRandom(1))(train);
}

describe("learned posterior", () => {
  it("gives probabilities over 0 that add up to 1, whatever the table", () => {
    const table = fc
      .record({ rows: fc.integer({ min: 2, max: 30 }), classCount: fc.integer({ min: 1, max: 4 }) })
      .chain(({ rows, classCount }) =>
        fc.record({
          labels: fc.array(fc.nat(classCount - 1), { minLength: rows, maxLength: rows }),
          words: fc.array(fc.nat(3), { minLength: rows, maxLength: rows }),
          numbers: fc.array(
            fc.oneof(fc.constant(Number.NaN), fc.double({ noNaN: true, noDefaultInfinity: true })),
            {
              minLength: rows,
              maxLength: rows,
            },
          ),
          classCount: fc.constant(classCount),
        }),
      );
    fc.assert(
      fc.property(table, ({ labels, words, numbers, classCount }) => {
        const features: Feature[] = [
          coded("words", words, 3),
          { kind: "numeric", name: "numbers", numbers: Float64Array.from(numbers) },
        ];
        const data = { features, labels: Int32Array.from(labels), classCount };
        const probabilities = answers(data, all(data).slice(1))(0);
        expect(probabilities.every((p) => p > 0 && p <= 1)).toBe(true);
        expect(probabilities.reduce((sum, p) => sum + p, 0)).toBeCloseTo(1, 9);
      }),
      { numRuns: 40 },
    );
  }, 60_000);

  it("learns what no finding tells by itself: whether two of them agree", () => {
    const random = seededRandom(3);
    const bits = Array.from({ length: 160 }, () => [0, 1, 2, 3].map(() => (random() < 0.5 ? 1 : 2)));
    const data: LabelledRows = {
      features: [0, 1, 2, 3].map((at) =>
        coded(
          `b${at}`,
          bits.map((row) => row[at] ?? 0),
          2,
        ),
      ),
      labels: Int32Array.from(bits, ([a, b]) => (a === b ? 1 : 0)),
      classCount: 2,
    };
    const rows = all(data);
    const ask = answers(
      data,
      rows.filter((row) => row >= 40),
    );
    const right = rows.slice(0, 40).filter((row) => (ask(row)[data.labels[row] ?? 0] ?? 0) > 0.5).length;
    expect(right).toBeGreaterThanOrEqual(38);
  });

  it("is not surer than the rows' classes allow where nothing tells anything", () => {
    const random = seededRandom(5);
    const words = Array.from({ length: 200 }, () => 1 + Math.floor(3 * random()));
    const labels = Int32Array.from(words, () => (random() < 0.5 ? 0 : 1));
    const data = { features: [coded("noise", words, 3)], labels, classCount: 2 };
    const ask = answers(data, all(data).slice(20));
    for (let row = 0; row < 20; row++) expect(Math.max(...ask(row))).toBeLessThan(0.65);
  });
});
