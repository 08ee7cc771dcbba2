import type { CaseTable } from "./caseTable";
import {
  type CodedColumn,
  listValues,
  type NumericColumn,
  type PostingList,
  type TextColumn,
} from "./column";
import { checkNames, encodeInterval, encodeOutcome, encodeValue, readOwn } from "./encodeValue";
import { ExactMean } from "./exactMean";
import { findingSimilarity } from "./measures/findingSimilarity";
import { nominalSimilarity } from "./measures/nominalSimilarity";
import { ordinalSimilarity } from "./measures/ordinalSimilarity";
import { taxonomySimilarity } from "./measures/taxonomySimilarity";
import type { AttributeValue, Query } from "./row";
import { scoreIntervals } from "./scoreIntervals";

/** Expected similarity where no case and no list of values gives a mean: the middle, the same for all cases, so that it ranks none. */
export const NOTHING_TO_EXPECT = 0.5;

interface KnownInQuery {
  readonly weight: number;
  /** What a case that does not know it counts as: the mean similarity of those that do. */
  readonly expected: number;
}

/** `similarityByCode` has the similarity to the query at each code of the column, the expected one at [0]. */
export interface CodedTerm extends KnownInQuery {
  readonly kind: "coded";
  readonly column: CodedColumn;
  readonly queryValue: AttributeValue;
  readonly similarityByCode: Float64Array;
}

/** `similarityByRow` has the similarity to the query's interval by row number, NaN where unknown. */
export interface NumericTerm extends KnownInQuery {
  readonly kind: "numeric";
  readonly column: NumericColumn;
  readonly queryValue: AttributeValue;
  readonly similarityByRow: Float64Array;
}

/** `similarityByCode` as in a coded term, by outcome. */
export interface FindingTerm extends KnownInQuery {
  readonly kind: "finding";
  readonly attribute: string;
  readonly list: PostingList;
  readonly queryValue: string;
  readonly similarityByCode: Float64Array;
}

/** `similarityByRow` has the caller's scores, NaN where unknown; it may end before the table does. */
export interface TextTerm extends KnownInQuery {
  readonly kind: "text";
  readonly column: TextColumn;
  readonly similarityByRow: Float64Array;
}

/** One attribute, or one finding key, that the query knows. */
export type Term = CodedTerm | NumericTerm | FindingTerm | TextTerm;

/** A query ready to be scored against the table as it stands; compile it again after the table has changed. */
export interface CompiledQuery {
  /** In the order of the schema, keys in the order of theirs. */
  readonly terms: readonly Term[];
  /** Sum of the terms' weights. */
  readonly totalWeight: number;
}

/** Fill [0] with the mean over the live rows, or over the listed values equally where no row knows any. */
function putExpected(similarityByCode: Float64Array, counts: Int32Array): number {
  const known = new ExactMean();
  const listed = new ExactMean();
  for (let code = 1; code < similarityByCode.length; code += 1) {
    const similarity = similarityByCode[code] ?? 0;
    known.add(similarity, counts[code]);
    listed.add(similarity);
  }
  const expected = known.mean() ?? listed.mean() ?? NOTHING_TO_EXPECT;
  similarityByCode[0] = expected;
  return expected;
}

/** The local measure of a coded column with the query's side filled in. */
function compareWith(column: CodedColumn, queryCode: number): (code: number) => number {
  const { attribute, values } = column;
  const queryValue = values[queryCode - 1] ?? "";
  switch (attribute.kind) {
    case "nominal": {
      const alike = attribute.alike ?? nominalSimilarity;
      return (code) => alike(queryValue, values[code - 1] ?? "");
    }
    case "ordinal":
      return (code) => ordinalSimilarity(queryCode - 1, code - 1, values.length);
    case "taxonomy":
      return (code) => taxonomySimilarity(attribute.taxonomy, queryValue, values[code - 1] ?? "");
  }
}

function compileCoded(column: CodedColumn, queryValue: AttributeValue): CodedTerm {
  const similarityTo = compareWith(column, encodeValue(column, queryValue));
  const similarityByCode = new Float64Array(listValues(column.attribute).length + 1);
  for (let code = 1; code < similarityByCode.length; code += 1) {
    const similarity = similarityTo(code);
    if (!(similarity >= 0 && similarity <= 1)) {
      throw new RangeError(
        `"${column.attribute.name}" must be alike by 0..1; got ${similarity}; mend its alike function`,
      );
    }
    similarityByCode[code] = similarity;
  }
  const expected = putExpected(similarityByCode, column.counts);
  return { kind: "coded", column, queryValue, weight: column.attribute.weight, similarityByCode, expected };
}

/** The mean over the rows that know the attribute. */
function expectByRow(table: CaseTable, similarityByRow: Float64Array): number {
  const known = new ExactMean();
  known.addKnown(similarityByRow, table.live, table.rowCount);
  return known.mean() ?? NOTHING_TO_EXPECT;
}

function compileNumeric(table: CaseTable, column: NumericColumn, queryValue: AttributeValue): NumericTerm {
  const { name, weight } = column.attribute;
  const similarityByRow = scoreIntervals(column, encodeInterval(name, queryValue), table.rowCount);
  const expected = expectByRow(table, similarityByRow);
  return { kind: "numeric", column, queryValue, weight, similarityByRow, expected };
}

function compileFinding(attribute: string, list: PostingList, queryValue: string): FindingTerm {
  const { weight, outcomes, ordered } = list.key;
  const queryCode = encodeOutcome(list, queryValue);
  const similarityByCode = new Float64Array(outcomes.length + 1);
  for (let code = 1; code < similarityByCode.length; code += 1) {
    similarityByCode[code] = findingSimilarity(queryCode - 1, code - 1, outcomes.length, ordered);
  }
  const expected = putExpected(similarityByCode, list.counts);
  return { kind: "finding", attribute, list, queryValue, weight, similarityByCode, expected };
}

function compileText(table: CaseTable, column: TextColumn, scores: Float64Array): TextTerm {
  const { name, weight } = column.attribute;
  for (let row = 0; row < scores.length; row += 1) {
    const score = scores[row] ?? 0;
    if (score < 0 || score > 1) {
      throw new RangeError(`"${name}" must be scored 0..1; got ${score} at row ${row}; scale the scores`);
    }
  }
  const expected = expectByRow(table, scores);
  return { kind: "text", column, similarityByRow: scores, weight, expected };
}

/**
 * Compile a query against a table: one term for every attribute and finding key that the query knows.
 * Where a case does not know a term it counts as the EXPECTED similarity: the mean of s(query, v) over the values v
 * of the cases that know it; where none does, over the values that the schema lists, equally; where it lists none, `NOTHING_TO_EXPECT`.
 * So unknown is neither agreement nor contradiction.
 *
 * @param query values and findings in the words of the schema.
 * @returns terms in the order of the schema.
 * @throws RangeError when a name or value is not in the schema, or a text score or `alike` is outside 0..1.
 * Source: Richter & Weber 2013, chapter 6 (local and global similarity, unknown values).
 */
export function compileQuery(table: CaseTable, query: Query): CompiledQuery {
  const { values = {}, findings = {}, textScores = {} } = query;
  checkNames(table.columns, values, findings);
  for (const name of Object.keys(textScores)) {
    if (table.columns.get(name)?.kind === "text") continue;
    throw new RangeError(`text scores must belong to a text attribute; got "${name}"; mend its name`);
  }
  const terms: Term[] = [];
  for (const [name, column] of table.columns) {
    const value = readOwn(values, name);
    if (column.kind === "coded" && value !== undefined) terms.push(compileCoded(column, value));
    if (column.kind === "numeric" && value !== undefined) terms.push(compileNumeric(table, column, value));
    if (column.kind === "text") {
      const scores = readOwn(textScores, name);
      if (scores !== undefined) terms.push(compileText(table, column, scores));
    }
    if (column.kind === "findings") {
      const outcomes = readOwn(findings, name);
      for (const [key, list] of column.postings) {
        const outcome = readOwn(outcomes, key);
        if (outcome !== undefined) terms.push(compileFinding(name, list, outcome));
      }
    }
  }
  return { terms, totalWeight: terms.reduce((sum, { weight }) => sum + weight, 0) };
}
