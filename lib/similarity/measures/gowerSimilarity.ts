import { nominalSimilarity } from "./nominalSimilarity";
import { numericSimilarity } from "./numericSimilarity";
import { ordinalSimilarity } from "./ordinalSimilarity";

interface Weighted {
  /** 0 or more; default 1. */
  readonly weight?: number;
}

/** One column of a data matrix; with `bothAbsent` (asymmetric binary) a pair in which both have that value is not compared. */
export type GowerVariable =
  | (Weighted & { readonly kind: "nominal"; readonly bothAbsent?: string })
  | (Weighted & { readonly kind: "ordinal"; readonly ranks: readonly string[] })
  | (Weighted & { readonly kind: "numeric"; readonly range: number });

/** The local similarity, or undefined where the two cannot be compared. */
function compare(variable: GowerVariable, a: string, b: string): number | undefined {
  switch (variable.kind) {
    case "nominal":
      return a === b && a === variable.bothAbsent ? undefined : nominalSimilarity(a, b);
    case "ordinal":
      return ordinalSimilarity(variable.ranks.indexOf(a), variable.ranks.indexOf(b), variable.ranks.length);
    case "numeric":
      return numericSimilarity(Number(a), Number(a), Number(b), Number(b), variable.range);
  }
}

/**
 * Gower's general coefficient: sum of w s over sum of w, over the variables that both know.
 * It leaves out what either does not know; retrieval does not (see `compileQuery`), so this one is for comparison with other programs.
 *
 * @param variables one a column.
 * @param a values as text, one a variable; undefined is unknown.
 * @param b the same.
 * @returns 0..1, symmetric; undefined where nothing can be compared.
 * @throws RangeError when an ordinal value is not among the ranks.
 * Source: Gower 1971, equation 1; asymmetric binary as in Kaufman & Rousseeuw 1990, chapter 1.
 */
export function gowerSimilarity(
  variables: readonly GowerVariable[],
  a: readonly (string | undefined)[],
  b: readonly (string | undefined)[],
): number | undefined {
  let sum = 0;
  let weights = 0;
  for (const [i, variable] of variables.entries()) {
    const valueA = a[i];
    const valueB = b[i];
    if (valueA === undefined || valueB === undefined) continue;
    const similarity = compare(variable, valueA, valueB);
    if (similarity === undefined) continue;
    const weight = variable.weight ?? 1;
    sum += weight * similarity;
    weights += weight;
  }
  return weights === 0 ? undefined : sum / weights;
}
