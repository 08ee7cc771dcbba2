import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { type GowerVariable, gowerSimilarity } from "@/lib/similarity/measures/gowerSimilarity";

// Source: Gower 1971; data set `flower` (18 flowers, 8 characters) of the R package cluster, from Struyf, Hubert & Rousseeuw 1996.
// Values: cluster::daisy(flower), and cluster::daisy(flower, type = list(asymm = 3)), R 4.2.2. daisy gives dissimilarities.

const flowers = readFileSync(new URL("data/flower.csv", import.meta.url), "utf8")
  .trim()
  .split("\n")
  .slice(1)
  .map((line) => line.replaceAll('"', "").split(",").slice(1));

const ranks = (count: number) => Array.from({ length: count }, (_, i) => String(i + 1));

const rangeOf = (column: number): number => {
  const numbers = flowers.map((flower) => Number(flower[column]));
  return Math.max(...numbers) - Math.min(...numbers);
};

const variables = (third: GowerVariable): GowerVariable[] => [
  { kind: "nominal" },
  { kind: "nominal" },
  third,
  { kind: "nominal" },
  { kind: "ordinal", ranks: ranks(3) },
  { kind: "ordinal", ranks: ranks(18) },
  { kind: "numeric", range: rangeOf(6) },
  { kind: "numeric", range: rangeOf(7) },
];

const symmetric = variables({ kind: "nominal" });
const asymmetric = variables({ kind: "nominal", bothAbsent: "0" });

/** Flowers are numbered from 1. */
function dissimilarity(of: readonly GowerVariable[], i: number, j: number): number {
  const similarity = gowerSimilarity(of, flowers[i - 1] ?? [], flowers[j - 1] ?? []);
  return 1 - (similarity ?? Number.NaN);
}

function sumOfPairs(of: readonly GowerVariable[]): number {
  let sum = 0;
  for (let i = 1; i <= 18; i += 1) for (let j = i + 1; j <= 18; j += 1) sum += dissimilarity(of, i, j);
  return sum;
}

describe("Gower's coefficient on the flower data", () => {
  it.each([
    [1, 2, 0.8875408],
    [1, 3, 0.5272467],
    [1, 4, 0.3517974],
    [3, 10, 0.4678105],
  ])("flowers %i and %i differ as daisy says, all binary characters symmetric", (i, j, published) => {
    expect(Math.abs(dissimilarity(symmetric, i, j) - published)).toBeLessThan(1e-7);
  });

  it.each([
    [2, 3, 0.5882353],
    [3, 10, 0.5346405],
  ])("flowers %i and %i differ as daisy says, tubers asymmetric", (i, j, published) => {
    expect(Math.abs(dissimilarity(asymmetric, i, j) - published)).toBeLessThan(1e-7);
  });

  it("all 153 pairs add up as in daisy", () => {
    expect(Math.abs(sumOfPairs(asymmetric) - 77.9935166)).toBeLessThan(1e-7);
    expect(Math.abs(sumOfPairs(symmetric) - 74.4395833)).toBeLessThan(1e-7);
  });
});
