import { describe, expect, it } from "vitest";
import { learnPoolWeights } from "@/lib/diagnosis/learned/poolWeights";
import { sampleRows } from "@/lib/diagnosis/learned/sampleRows";
import { seededRandom } from "@/lib/diagnosis/learned/seededRandom";
import { stratifiedFolds } from "@/lib/diagnosis/learned/stratifiedFolds";
import { minimise } from "@/lib/similarity/learned/minimise";

const logs = (...p: number[]) => Float64Array.from(p, Math.log);

describe("weights of a pool", () => {
  it("trust the one that knows above the one that guesses", () => {
    const truths = Int32Array.from({ length: 100 }, (_, row) => row % 2);
    const opinions = [...truths].map((truth, row) => {
      const guess = row % 4 < 2 ? logs(0.9, 0.1) : logs(0.1, 0.9);
      return [truth === 0 ? logs(0.8, 0.2) : logs(0.2, 0.8), guess];
    });
    const [knows = 0, guesses = 0] = learnPoolWeights(opinions, truths, 1);
    expect(knows).toBeGreaterThan(1);
    expect(guesses).toBeLessThan(0.1);
  });

  it("temper one that is too sure: .99 said and 80 in 100 right come to .8", () => {
    const truths = Int32Array.from({ length: 500 }, (_, row) => (row % 5 === 0 ? 1 : 0));
    const weights = learnPoolWeights(
      [...truths].map(() => [logs(0.99, 0.01)]),
      truths,
      1e-6,
    );
    const odds = Math.exp((weights[0] ?? 0) * Math.log(99));
    expect(odds / (1 + odds)).toBeCloseTo(0.8, 3);
  });

  it("stay equal where there is nothing to learn from", () => {
    expect([...learnPoolWeights([], new Int32Array(0), 1)]).toEqual([]);
  });
});

it("minimise finds the lowest point of a narrow bowl", () => {
  const found = minimise(
    ([x = 0, y = 0], gradient) => {
      gradient[0] = 2 * (x - 3);
      gradient[1] = 200 * (y + 1);
      return (x - 3) ** 2 + 100 * (y + 1) ** 2;
    },
    new Float64Array(2),
    { mostSteps: 50, tolerance: 1e-12 },
  );
  expect(found[0]).toBeCloseTo(3, 5);
  expect(found[1]).toBeCloseTo(-1, 5);
});

describe("dealing and sampling rows", () => {
  const labels = Int32Array.from({ length: 103 }, (_, row) => (row < 60 ? 0 : row < 100 ? 1 : 2));

  it("spreads every class over the folds as evenly as it goes, the same for the same seed", () => {
    const folds = stratifiedFolds(labels, 10, seededRandom(4));
    expect([...stratifiedFolds(labels, 10, seededRandom(4))]).toEqual([...folds]);
    for (const label of [0, 1, 2]) {
      const counts = Array.from(
        { length: 10 },
        (_, fold) => folds.filter((f, row) => f === fold && labels[row] === label).length,
      );
      expect(Math.max(...counts) - Math.min(...counts)).toBeLessThanOrEqual(1);
    }
  });

  it("keeps each class's share, and at least one row of the rarest", () => {
    const rows = Int32Array.from(labels, (_, row) => row);
    const few = sampleRows({ features: [], labels, classCount: 3 }, rows, 20);
    const counts = [0, 1, 2].map((label) => few.filter((row) => labels[row] === label).length);
    expect(counts[0]).toBe(12);
    expect(counts[1]).toBe(8);
    expect(counts[2]).toBe(1);
  });
});
