import { freeThoughFaulty } from "./diagnosisWeight";
import { pairKey } from "./pairKey";
import type { SwapPair } from "./swapPairs";

/** A swap worth trying: what it is expected to tell about which diagnosis holds. */
export type NextSwap = Readonly<{ a: string; b: string; gainBits: number }>;

export type WeighedDiagnosis = Readonly<{ parts: readonly string[]; weight: number }>;

/** How often two sound parts do not run free together, being made for other partners. Chosen; from the bench, not measured. */
const boundThoughSound = 0.02;
/** A swap that tells less than this is not worth taking two parts out for. Chosen. */
const leastGainBits = 0.01;

/**
 * Chooses the one further swap that tells most about which diagnosis holds.
 *
 *   gain = H(diagnosis) - sum over free and not free of P(result) H(diagnosis | result)
 *
 * Only pairs of two kinds that have been paired before are proposed, where the kind is the name without its trailing number.
 *
 * @param diagnoses what could be, with weights of any common scale
 * @param pairs all that was seen
 * @param atHand further parts that could be tried, plain names
 * @returns the swap and its expected gain in bits; ties go to the parts seen first; undefined when no swap tells 0.01 bit
 * Source: Lindley 1956 for the gain; de Kleer & Williams 1987 for choosing measurements by it.
 */
export function chooseSwap(
  diagnoses: readonly WeighedDiagnosis[],
  pairs: readonly SwapPair[],
  atHand: readonly string[],
): NextSwap | undefined {
  let best: NextSwap | undefined;
  for (const [a, b] of untriedPairs(pairs, atHand)) {
    const gainBits = expectedGainBits(diagnoses, a, b);
    // Rounding must not decide between swaps that tell the same.
    if (gainBits > (best?.gainBits ?? leastGainBits) + 1e-9) best = { a, b, gainBits };
  }
  return best;
}

/** The part's name without its trailing number: `piston 2` is a piston. */
function kindOf(part: string): string {
  return part.replace(/\s*\d+$/, "");
}

function untriedPairs(pairs: readonly SwapPair[], atHand: readonly string[]): [string, string][] {
  const tried = new Set(pairs.map(({ a, b }) => pairKey(a, b)));
  const parts = [...new Set([...pairs.flatMap(({ a, b }) => [a, b]), ...atHand])];
  const proposed: [string, string][] = [];
  for (const { a, b } of pairs)
    for (const one of parts.filter((part) => kindOf(part) === kindOf(a)))
      for (const other of parts.filter((part) => kindOf(part) === kindOf(b) && part !== one)) {
        const key = pairKey(one, other);
        if (tried.has(key)) continue;
        tried.add(key);
        proposed.push([one, other]);
      }
  return proposed;
}

function expectedGainBits(diagnoses: readonly WeighedDiagnosis[], a: string, b: string): number {
  const free = diagnoses.map(({ parts, weight }) => {
    const faulty = Number(parts.includes(a)) + Number(parts.includes(b));
    return weight * (faulty === 0 ? 1 - boundThoughSound : freeThoughFaulty ** faulty);
  });
  const all = diagnoses.map(({ weight }) => weight);
  const bound = all.map((weight, index) => weight - (free[index] ?? 0));
  const total = sum(all);
  return entropyBits(all) - (sum(free) * entropyBits(free) + sum(bound) * entropyBits(bound)) / total;
}

function entropyBits(weights: readonly number[]): number {
  const total = sum(weights);
  return sum(weights.map((weight) => (weight > 0 ? (weight / total) * Math.log2(total / weight) : 0)));
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
