import type { CompiledQuery, Term } from "@/lib/similarity/compileQuery";
import { findingSimilarity } from "@/lib/similarity/measures/findingSimilarity";
import { nominalSimilarity } from "@/lib/similarity/measures/nominalSimilarity";
import { numericSimilarity } from "@/lib/similarity/measures/numericSimilarity";
import { ordinalSimilarity } from "@/lib/similarity/measures/ordinalSimilarity";
import type { Row } from "@/lib/similarity/row";

/** A row with how alike it is, 0..1. */
export type ScoredRow = Readonly<{ id: string; similarity: number }>;

/**
 * Retrieval as one would first write it: every row an object, attribute by attribute, all rows sorted.
 *
 * @param compiled tells what an unknown counts as and the weights; nothing else is taken from it
 * @returns the k rows most alike; ties by the newer date, then by id
 */
export function naiveRetrieve(
  rows: readonly Row[],
  { terms, totalWeight }: CompiledQuery,
  k: number,
): ScoredRow[] {
  return rows
    .map(({ id, date, values, findings }) => {
      let sum = 0;
      for (const term of terms) sum += term.weight * (similarityOf(term, values, findings) ?? term.expected);
      return { id, date, similarity: sum / totalWeight };
    })
    .sort(
      (a, b) =>
        b.similarity - a.similarity || (a.date > b.date ? -1 : a.date < b.date ? 1 : a.id < b.id ? -1 : 1),
    )
    .slice(0, k);
}

/** Undefined where the row does not know it. */
function similarityOf(term: Term, values: Row["values"], findings: Row["findings"]): number | undefined {
  if (term.kind === "finding") {
    const { key, outcomes, ordered } = term.list.key;
    const outcome = findings[term.attribute]?.[key];
    if (outcome === undefined) return undefined;
    return findingSimilarity(
      outcomes.indexOf(term.queryValue),
      outcomes.indexOf(outcome),
      outcomes.length,
      ordered,
    );
  }
  const { attribute } = term.column;
  const value = values[attribute.name];
  if (value === undefined || term.kind === "text") return undefined;
  const asked = term.queryValue;
  switch (attribute.kind) {
    case "nominal":
      return nominalSimilarity(String(asked), String(value));
    case "ordinal":
      return ordinalSimilarity(
        attribute.ranks.indexOf(String(asked)),
        attribute.ranks.indexOf(String(value)),
        attribute.ranks.length,
      );
    case "numeric":
      return typeof asked === "number" && typeof value === "number"
        ? numericSimilarity(asked, asked, value, value, attribute.tolerance)
        : undefined;
    default:
      return undefined;
  }
}
