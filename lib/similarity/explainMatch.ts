import { type CaseTable, isLive } from "./caseTable";
import { type CompiledQuery, compileQuery, type Term } from "./compileQuery";
import { decodeValue, findOutcomeCode } from "./decodeCase";
import { readOwn } from "./encodeValue";
import type { AttributeValue, Query } from "./row";
import { shareOf } from "./shareOf";

/** From here on two values count as near, below as different. Chosen: next to each other on a scale of three. */
const NEAR_FROM = 0.5;

/** Less than this under 1 is rounding. */
const ROUNDING = 1e-12;

/** How query and case stand to one another in one attribute. */
export type Verdict = "agrees" | "near" | "differs" | "unknown-in-case" | "unknown-in-query";

/** What one attribute, or one finding key, gives to the similarity of a case. */
export interface MatchShare {
  readonly attribute: string;
  /** The finding key, for a findings attribute. */
  readonly key?: string;
  readonly weight: number;
  /** 0..1; the expected one where the case does not know it; 0 where the query does not. */
  readonly similarity: number;
  /** weight x similarity / sum of the weights that the query knows, 0..1. */
  readonly share: number;
  readonly verdict: Verdict;
  /** Undefined where the query does not know it, and for text. */
  readonly queryValue?: AttributeValue;
  /** Undefined where the case does not know it, and for text. */
  readonly caseValue?: AttributeValue;
}

interface Known {
  readonly similarity: number;
  readonly caseValue?: AttributeValue;
  /** Neither stands under the other, and nothing but the root of the taxonomy stands over both. */
  readonly onlyRootShared?: boolean;
}

/** What the case knows of a term; undefined for nothing. */
function readCase(term: Term, row: number): Known | undefined {
  switch (term.kind) {
    case "coded": {
      const { column, queryValue, similarityByCode } = term;
      const code = column.codes[row] ?? 0;
      const caseValue = column.values[code - 1];
      if (caseValue === undefined) return undefined;
      const similarity = similarityByCode[code] ?? 0;
      if (column.attribute.kind !== "taxonomy") return { similarity, caseValue };
      const { taxonomy } = column.attribute;
      const shared = taxonomy.lowestCommonAncestor(String(queryValue), caseValue);
      const apart = shared !== queryValue && shared !== caseValue;
      return { similarity, caseValue, onlyRootShared: apart && taxonomy.depth(shared) === 1 };
    }
    case "finding": {
      const code = findOutcomeCode(term.list, row);
      const caseValue = term.list.key.outcomes[code - 1];
      return caseValue === undefined
        ? undefined
        : { similarity: term.similarityByCode[code] ?? 0, caseValue };
    }
    case "numeric":
    case "text": {
      const similarity = term.similarityByRow[row] ?? Number.NaN;
      return Number.isNaN(similarity) ? undefined : { similarity, caseValue: decodeValue(term.column, row) };
    }
  }
}

function judge(known: Known | undefined): Verdict {
  if (known === undefined) return "unknown-in-case";
  if (known.similarity >= 1 - ROUNDING) return "agrees";
  return known.similarity >= NEAR_FROM && known.onlyRootShared !== true ? "near" : "differs";
}

function explainTerm(term: Term, row: number, totalWeight: number): MatchShare {
  const known = readCase(term, row);
  const { weight } = term;
  const similarity = known?.similarity ?? term.expected;
  return {
    attribute: term.kind === "finding" ? term.attribute : term.column.attribute.name,
    ...(term.kind === "finding" && { key: term.list.key.key }),
    weight,
    similarity,
    share: shareOf(weight, similarity, totalWeight),
    verdict: judge(known),
    ...(term.kind !== "text" && { queryValue: term.queryValue }),
    ...(known?.caseValue !== undefined && { caseValue: known.caseValue }),
  };
}

/** What the case knows and the query does not ask about. */
function listUnasked(table: CaseTable, query: Query, row: number): MatchShare[] {
  const unasked: MatchShare[] = [];
  const rest = { similarity: 0, share: 0, verdict: "unknown-in-query" } as const;
  for (const [attribute, column] of table.columns) {
    if (column.kind === "findings") {
      const asked = readOwn(query.findings, attribute);
      for (const [key, list] of column.postings) {
        if (readOwn(asked, key) !== undefined) continue;
        const caseValue = list.key.outcomes[findOutcomeCode(list, row) - 1];
        if (caseValue !== undefined)
          unasked.push({ attribute, key, weight: list.key.weight, caseValue, ...rest });
      }
    } else if (column.kind !== "text" && readOwn(query.values, attribute) === undefined) {
      const caseValue = decodeValue(column, row);
      if (caseValue === undefined) continue;
      unasked.push({ attribute, weight: column.attribute.weight, caseValue, ...rest });
    }
  }
  return unasked;
}

/**
 * Take a case's similarity apart: what each attribute and finding key gave to it.
 *
 * @param row number of a live row.
 * @param compiled the query compiled against the table as it stands, where that was done already: for several rows it need not
 * be done again
 * @returns first what the query knows, as `explainAsked` gives it; then what the case knows and the query does not, with share 0.
 * @throws RangeError when the row is not in the table, or as `compileQuery` does.
 */
export function explainMatch(
  table: CaseTable,
  query: Query,
  row: number,
  compiled: CompiledQuery = compileQuery(table, query),
): MatchShare[] {
  return [...explainAsked(table, row, compiled), ...listUnasked(table, query, row)];
}

/**
 * Take a case's similarity apart by what the query knows.
 *
 * @param row number of a live row.
 * @param compiled the query compiled against the table as it stands
 * @returns in the order of the schema: the shares add up to the similarity of `retrieve`, to its 12 decimals
 * @throws RangeError when the row is not in the table.
 */
export function explainAsked(
  table: CaseTable,
  row: number,
  { terms, totalWeight }: CompiledQuery,
): MatchShare[] {
  if (!isLive(table, row)) {
    throw new RangeError(`a row to explain must be in the table; got ${row}; take it from a retrieval`);
  }
  return terms.map((term) => explainTerm(term, row, totalWeight));
}
