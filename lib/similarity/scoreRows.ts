import type { CaseTable } from "./caseTable";
import type { CodedTerm, CompiledQuery, FindingTerm, NumericTerm, TextTerm } from "./compileQuery";
import { shareOf } from "./shareOf";

// No read in these loops is past the end: row < rowCount <= every column's length, code < every share table's length.
// The `?? 0` and `?? NaN` speak to the compiler only; timed, they cost nothing.

/** Rows scored through all columns before the next ones: their sums (64 kB) stay in the cache. */
const BLOCK_ROWS = 8192;

/** One byte-coded column with the share of the similarity at each of its codes. */
interface ByteColumn {
  readonly codes: Uint8Array;
  readonly shares: Float64Array;
}

function sharesByCode(
  { weight, similarityByCode }: CodedTerm | FindingTerm,
  totalWeight: number,
): Float64Array {
  return similarityByCode.map((similarity) => shareOf(weight, similarity, totalWeight));
}

/** Four columns a pass: the sum is read and written once for four look-ups. */
function addFourColumns(
  sums: Float64Array,
  a: ByteColumn,
  b: ByteColumn,
  c: ByteColumn,
  d: ByteColumn,
  from: number,
  to: number,
): void {
  const { codes: codesA, shares: sharesA } = a;
  const { codes: codesB, shares: sharesB } = b;
  const { codes: codesC, shares: sharesC } = c;
  const { codes: codesD, shares: sharesD } = d;
  for (let row = from; row < to; row += 1) {
    const ab = (sharesA[codesA[row] ?? 0] ?? 0) + (sharesB[codesB[row] ?? 0] ?? 0);
    const cd = (sharesC[codesC[row] ?? 0] ?? 0) + (sharesD[codesD[row] ?? 0] ?? 0);
    sums[row] = (sums[row] ?? 0) + (ab + cd);
  }
}

function addByteColumn(sums: Float64Array, { codes, shares }: ByteColumn, from: number, to: number): void {
  for (let row = from; row < to; row += 1) sums[row] = (sums[row] ?? 0) + (shares[codes[row] ?? 0] ?? 0);
}

/** The same for two bytes a row: a loop of its own, for a loop that meets both widths is slow on either. */
function addWideColumn(sums: Float64Array, codes: Uint16Array, shares: Float64Array): void {
  for (let row = 0; row < sums.length; row += 1)
    sums[row] = (sums[row] ?? 0) + (shares[codes[row] ?? 0] ?? 0);
}

function addByteColumns(sums: Float64Array, columns: readonly ByteColumn[]): void {
  for (let from = 0; from < sums.length; from += BLOCK_ROWS) {
    const to = Math.min(from + BLOCK_ROWS, sums.length);
    for (let i = 0; i < columns.length; i += 4) {
      const [a, b, c, d] = columns.slice(i, i + 4);
      if (a && b && c && d) addFourColumns(sums, a, b, c, d, from, to);
      else for (const column of columns.slice(i, i + 4)) addByteColumn(sums, column, from, to);
    }
  }
}

function addByRow(sums: Float64Array, term: NumericTerm | TextTerm, totalWeight: number): void {
  const { similarityByRow, weight, expected } = term;
  for (let row = 0; row < sums.length; row += 1) {
    const known = similarityByRow[row] ?? Number.NaN;
    const similarity = Number.isNaN(known) ? expected : known;
    sums[row] = (sums[row] ?? 0) + shareOf(weight, similarity, totalWeight);
  }
}

/** Every row starts with the expected share; the few that know the key are put right. */
function addFinding(sums: Float64Array, { list }: FindingTerm, shares: Float64Array): void {
  const { rows, outcomes, length } = list;
  const expectedShare = shares[0] ?? 0;
  const corrections = shares.map((share) => share - expectedShare);
  for (let i = 0; i < length; i += 1) {
    const row = rows[i] ?? 0;
    sums[row] = (sums[row] ?? 0) + (corrections[outcomes[i] ?? 0] ?? 0);
  }
}

/**
 * Add up the shares of every row: columns in blocks and four a pass, findings by their posting lists.
 * All shares and their differences lie on the grid of `toShareGrid`, where sums are exact: the order of the additions cannot show.
 *
 * @param compiled compiled against this table since it last changed.
 * @returns the sums by row, 0..1, not rounded; rows that were removed hold what an all-unknown case would.
 */
export function scoreRows(table: CaseTable, { terms, totalWeight }: CompiledQuery): Float64Array {
  const sums = new Float64Array(table.rowCount);
  const findings = terms.filter((term) => term.kind === "finding");
  const findingShares = findings.map((term) => sharesByCode(term, totalWeight));
  sums.fill(findingShares.reduce((sum, shares) => sum + (shares[0] ?? 0), 0));
  const byteColumns: ByteColumn[] = [];
  for (const term of terms) {
    if (term.kind === "numeric" || term.kind === "text") addByRow(sums, term, totalWeight);
    else if (term.kind === "coded") {
      const shares = sharesByCode(term, totalWeight);
      const { codes } = term.column;
      if (codes instanceof Uint8Array) byteColumns.push({ codes, shares });
      else addWideColumn(sums, codes, shares);
    }
  }
  addByteColumns(sums, byteColumns);
  for (const [i, term] of findings.entries()) {
    const shares = findingShares[i];
    if (shares !== undefined) addFinding(sums, term, shares);
  }
  return sums;
}
