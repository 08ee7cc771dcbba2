import { describe, expect, it } from "vitest";
import { seededRandom } from "@/lib/diagnosis/learned/seededRandom";
import { type AddDistance, sumOf } from "@/lib/similarity/learned/distance";
import { equalFrequencyCuts } from "@/lib/similarity/learned/equalFrequencyCuts";
import type { Feature, LabelledRows } from "@/lib/similarity/learned/feature";
import { informationWeights } from "@/lib/similarity/learned/informationWeights";
import { informativeCuts } from "@/lib/similarity/learned/informativeCuts";
import { learnNeighbourWeights } from "@/lib/similarity/learned/neighbourWeights";
import { learnPlainDifference } from "@/lib/similarity/learned/plainDifference";
import { unknownTells } from "@/lib/similarity/learned/unknownTells";
import { learnValueDifference } from "@/lib/similarity/learned/valueDifference";

const words = (codes: readonly number[], valueCount: number, name = "w"): Feature => ({
  kind: "coded",
  name,
  valueCount,
  codes: Int32Array.from(codes),
});
const table = (features: readonly Feature[], labels: readonly number[]): LabelledRows => ({
  features,
  labels: Int32Array.from(labels),
  classCount: Math.max(...labels) + 1,
});
const rowsOf = ({ labels }: LabelledRows) => Int32Array.from(labels, (_, row) => row);
const from = (parts: readonly AddDistance[], row: number, count: number) => {
  const into = new Float64Array(count);
  sumOf(parts)(row, into);
  return [...into];
};

describe("learned value differences", () => {
  // Values 1 and 2 are met with class 0 twice, value 3 with class 1 twice; the prior is (4 + 1) / 8 and (2 + 1) / 8.
  const data = table([words([1, 1, 2, 2, 3, 3], 3)], [0, 0, 0, 0, 1, 1]);

  it("holds values alike whose classes fall alike, and apart by the squared differences of smoothed shares", () => {
    const [first, , third, , fifth] = from(learnValueDifference(data, rowsOf(data)), 0, 6);
    expect(first).toBe(0);
    expect(third).toBe(0);
    // P(0 | 1) = (2 + 5/8) / 3 = .875, P(0 | 3) = (0 + 5/8) / 3 = .208333; both classes differ by .666667.
    expect(fifth).toBeCloseTo(2 * (2 / 3) ** 2, 12);
  });

  it("puts unknown in the middle where it tells nothing", () => {
    const mixed = table([words([1, 1, 2, 2, 0, 0], 2)], [0, 0, 1, 1, 0, 1]);
    const distances = from(learnValueDifference(mixed, rowsOf(mixed)), 0, 6);
    expect(distances[4]).toBeCloseTo((distances[2] ?? 0) / 4, 12);
  });
});

describe("plain differences", () => {
  it("counts an unknown word as the expected difference to a word drawn at random", () => {
    const data = table([words([1, 1, 1, 2, 0, 0], 2)], [0, 1, 0, 1, 0, 1]);
    const distances = from(learnPlainDifference(data, rowsOf(data)), 0, 6);
    expect(distances.slice(0, 4)).toEqual([0, 0, 0, 1]);
    expect(distances[4]).toBeCloseTo(1 / 4, 12);
  });

  it("measures numbers in standard deviations, whatever their size, and passes constants over", () => {
    const numbers = (scale: number): Feature => ({
      kind: "numeric",
      name: "n",
      numbers: Float64Array.of(-1, 1, -1, 1).map((x) => x * scale),
    });
    for (const scale of [1, 1e300, 1e-300]) {
      const data = table([numbers(scale)], [0, 1, 0, 1]);
      expect(from(learnPlainDifference(data, rowsOf(data)), 0, 4)[1]).toBeCloseTo(1, 9);
    }
    const constant = table([numbers(0)], [0, 1, 0, 1]);
    expect(from(learnPlainDifference(constant, rowsOf(constant)), 0, 4)).toEqual([0, 0, 0, 0]);
  });
});

describe("cut points", () => {
  it("of equal frequency keep equal numbers together and hold as many rows each", () => {
    const rows = Int32Array.of(0, 1, 2, 3, 4, 5);
    expect(equalFrequencyCuts(Float64Array.of(1, 2, 3, 4, 5, 6), rows, 3)).toEqual([2.5, 4.5]);
    expect(equalFrequencyCuts(Float64Array.of(1, 1, 1, 1, 1, 2), rows, 3)).toEqual([1.5]);
    expect(equalFrequencyCuts(Float64Array.of(7, 7, 7, 7, 7, 7), rows, 3)).toEqual([]);
  });

  it("that inform stand where the class changes, and nowhere where it does not", () => {
    const numbers = Float64Array.from({ length: 40 }, (_, at) => at);
    const rows = Int32Array.from(numbers);
    expect(
      informativeCuts(
        numbers,
        Int32Array.from(numbers, (x) => (x < 15 ? 0 : 1)),
        2,
        rows,
      ),
    ).toEqual([14.5]);
    expect(
      informativeCuts(
        numbers,
        Int32Array.from(numbers, (x) => x % 2),
        2,
        rows,
      ),
    ).toEqual([]);
  });
});

describe("weights of features", () => {
  const random = seededRandom(2);
  const bit = () => (random() < 0.5 ? 1 : 2);
  // Ten columns, of which two tell at most: few rows are the same in all, so that the weights matter.
  const bits = Array.from({ length: 200 }, () => Array.from({ length: 10 }, bit));
  const column = (at: number) =>
    words(
      bits.map((row) => row[at] ?? 0),
      2,
      `b${at}`,
    );

  it("by information give the most to what tells the class, something to all, 1 on average", () => {
    const data = table(
      [column(0), column(1), column(2)],
      bits.map(([a]) => (a === 1 ? 0 : 1)),
    );
    const [first = 0, second = 0, third = 0] = informationWeights(data, rowsOf(data));
    expect(first).toBeGreaterThan(10 * Math.max(second, third));
    expect(Math.min(second, third)).toBeGreaterThan(0);
    expect((first + second + third) / 3).toBeCloseTo(1, 9);
  });

  it("by neighbours find two that tell only together, and leave the idle ones behind", () => {
    const data = table(
      bits[0]?.map((_, at) => column(at)) ?? [],
      bits.map(([a, b]) => (a === b ? 0 : 1)),
    );
    const rows = rowsOf(data);
    const [first = 0, second = 0, ...idle] = learnNeighbourWeights(
      learnPlainDifference(data, rows),
      data,
      rows,
    );
    expect(Math.min(first, second)).toBeGreaterThan(1.5 * Math.max(...idle));
  });

  it("by neighbours stay equal where there are too few rows to learn from", () => {
    const few = table([words([1, 2, 1], 2), words([2, 2, 1], 2)], [0, 1, 0]);
    expect([...learnNeighbourWeights(learnPlainDifference(few, rowsOf(few)), few, rowsOf(few))]).toEqual([
      1, 1,
    ]);
  });
});

it("unknown tells something where it goes with a class, and nothing where it falls by chance", () => {
  const labels = Array.from({ length: 40 }, (_, row) => row % 2);
  const data = table([], labels);
  const tells = (codes: readonly number[]) => unknownTells(Int32Array.from(codes), data, rowsOf(data));
  expect(tells(labels)).toBe(true);
  expect(tells(labels.map((_, row) => (row % 4 < 2 ? 0 : 1)))).toBe(false);
  expect(tells(labels.map(() => 1))).toBe(false);
});
