import type { Attribute, FindingKey } from "@/lib/similarity/attribute";
import type { AttributeValue, Query, Row } from "@/lib/similarity/row";
import type { Taxonomy } from "@/lib/similarity/taxonomy";

// The plain reference implementation of retrieval: objects, one case at a time, no codes, no tables, no postings.
// It shares with the fast one only the definition: shares and expected similarities count in whole steps of 2^-52.

const STEPS = 2 ** 52;

/** The nearest whole number of steps; halfway goes to the even one. */
function toSteps(x: number): number {
  const rounded = Math.round(x * STEPS);
  return rounded - x * STEPS === 0.5 && rounded % 2 === 1 ? rounded - 1 : rounded;
}

/** Mean over exact whole numbers of steps. */
function meanOf(similarities: readonly number[]): number {
  const steps = similarities.reduce((sum, similarity) => sum + BigInt(toSteps(similarity)), 0n);
  return Number(steps) / STEPS / similarities.length;
}

const boundsOf = (value: AttributeValue) => {
  if (typeof value === "string") throw new TypeError(`a number was expected; got ${value}`);
  return typeof value === "number" ? { low: value, high: value } : value;
};

function plainWuPalmer(taxonomy: Taxonomy, a: string, b: string): number {
  const pathA = [a, ...taxonomy.ancestors(a)];
  const pathB = [b, ...taxonomy.ancestors(b)];
  const sharedNodes = pathA.filter((id) => pathB.includes(id)).length;
  return (2 * sharedNodes) / (pathA.length + pathB.length);
}

function plainOnScale(scale: readonly string[], a: string, b: string): number {
  return scale.length === 1 ? 1 : 1 - Math.abs(scale.indexOf(a) - scale.indexOf(b)) / (scale.length - 1);
}

function plainFinding(key: FindingKey, a: string, b: string): number {
  if (key.ordered) return plainOnScale(key.outcomes, a, b);
  return a === b ? 1 : 0;
}

/** One thing to compare by: what a case has there, its similarity to the query, and what else it could have been. */
interface PlainTerm {
  readonly weight: number;
  readonly similarityOf: (row: Row) => number | undefined;
  readonly listed: readonly number[];
}

function plainValueTerm(
  attribute: Exclude<Attribute, { kind: "findings" | "text" }>,
  queryValue: AttributeValue,
): PlainTerm {
  const compare = (value: AttributeValue): number => {
    switch (attribute.kind) {
      case "nominal":
        return (attribute.alike ?? ((a: string, b: string) => (a === b ? 1 : 0)))(
          String(queryValue),
          String(value),
        );
      case "ordinal":
        return plainOnScale(attribute.ranks, String(queryValue), String(value));
      case "taxonomy":
        return plainWuPalmer(attribute.taxonomy, String(queryValue), String(value));
      case "numeric": {
        const a = boundsOf(queryValue);
        const b = boundsOf(value);
        const overlap = a.low <= b.high && b.low <= a.high;
        const gap = overlap ? 0 : Math.max(a.low - b.high, b.low - a.high);
        return gap >= attribute.tolerance ? 0 : 1 - gap / attribute.tolerance;
      }
    }
  };
  const listed = {
    nominal: () => (attribute.kind === "nominal" ? attribute.values : []),
    ordinal: () => (attribute.kind === "ordinal" ? attribute.ranks : []),
    taxonomy: () => (attribute.kind === "taxonomy" ? attribute.taxonomy.ids : []),
    numeric: () => [],
  }[attribute.kind]();
  return {
    weight: attribute.weight,
    similarityOf: (row) => {
      const value = row.values[attribute.name];
      return value === undefined ? undefined : compare(value);
    },
    listed: listed.map(compare),
  };
}

function plainTerms(
  attributes: readonly Attribute[],
  query: Query,
  textScore: (attribute: string, row: Row) => number | undefined,
): PlainTerm[] {
  return attributes.flatMap((attribute): PlainTerm[] => {
    if (attribute.kind === "findings") {
      return attribute.keys.flatMap((key) => {
        const asked = query.findings?.[attribute.name]?.[key.key];
        if (asked === undefined) return [];
        return {
          weight: key.weight,
          similarityOf: (row: Row) => {
            const outcome = row.findings[attribute.name]?.[key.key];
            return outcome === undefined ? undefined : plainFinding(key, asked, outcome);
          },
          listed: key.outcomes.map((outcome) => plainFinding(key, asked, outcome)),
        };
      });
    }
    if (attribute.kind === "text") {
      if (query.textScores?.[attribute.name] === undefined) return [];
      const similarityOf = (row: Row) => textScore(attribute.name, row);
      return [{ weight: attribute.weight, similarityOf, listed: [] }];
    }
    const asked = query.values?.[attribute.name];
    return asked === undefined ? [] : [plainValueTerm(attribute, asked)];
  });
}

/** A case with its similarity in steps (`similarity`, rounded to 12 decimals) and in ordinary floating point (`unrounded`). */
export interface PlainCase {
  readonly id: string;
  readonly similarity: number;
  readonly unrounded: number;
}

/**
 * Every row with its similarity, best first.
 *
 * @param rows the live rows only.
 * @param textScore score of a row's text, undefined where unknown.
 */
export function plainRetrieve(
  attributes: readonly Attribute[],
  rows: readonly Row[],
  query: Query,
  textScore: (attribute: string, row: Row) => number | undefined = () => undefined,
): PlainCase[] {
  const terms = plainTerms(attributes, query, textScore);
  const totalWeight = terms.reduce((sum, term) => sum + term.weight, 0);
  const expected = terms.map(({ similarityOf, listed }) => {
    const known = rows.map(similarityOf).filter((similarity) => similarity !== undefined);
    if (known.length > 0) return meanOf(known);
    return listed.length > 0 ? meanOf(listed) : 0.5;
  });
  const scored = rows.map((row) => {
    let steps = 0n;
    let weighted = 0;
    for (const [i, { weight, similarityOf }] of terms.entries()) {
      const similarity = similarityOf(row) ?? expected[i] ?? Number.NaN;
      weighted += weight * similarity;
      if (totalWeight > 0) steps += BigInt(toSteps((weight * similarity) / totalWeight));
    }
    const similarity = Math.floor((Number(steps) / STEPS) * 1e12 + 0.5) / 1e12;
    return { row, similarity, unrounded: totalWeight > 0 ? weighted / totalWeight : 0 };
  });
  scored.sort((a, b) => {
    if (a.similarity !== b.similarity) return b.similarity - a.similarity;
    if (a.row.date !== b.row.date) return a.row.date < b.row.date ? 1 : -1;
    return a.row.id < b.row.id ? -1 : 1;
  });
  return scored.map(({ row, similarity, unrounded }) => ({ id: row.id, similarity, unrounded }));
}
