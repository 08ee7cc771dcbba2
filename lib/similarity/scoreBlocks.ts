import type { CaseTable } from "./caseTable";
import type { PostingList } from "./column";
import type { CodedTerm, CompiledQuery, FindingTerm, NumericTerm, TextTerm } from "./compileQuery";
import { shareOf } from "./shareOf";

// No read in these loops is past the end: from + at < rowCount <= every column's length, code < every share table's length.
// The `?? 0` and `?? NaN` speak to the compiler only; timed, they cost nothing.

/** Rows scored through all columns before the next ones: their sums (64 kB) stay in the cache, and are all the room that is needed. */
const BLOCK_ROWS = 8192;

/** How many codes one byte can hold. */
const CODES = 256;

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

/** One column of two bytes a row, in the same way. */
interface WideColumn {
  readonly codes: Uint16Array;
  readonly shares: Float64Array;
}

/** One finding's posting list with what each outcome changes in the share that every row starts with. */
interface FindingList {
  readonly list: PostingList;
  readonly corrections: Float64Array;
  /** The first posting whose row has not been scored yet. */
  next: number;
}

/** Four byte-coded columns scored in one pass, with the shares of all four in one table, one after another. */
interface FourColumns {
  readonly codes: readonly [Uint8Array, Uint8Array, Uint8Array, Uint8Array];
  readonly shares: Float64Array;
}

/** The sum is read and written once for four look-ups, and one table to look up in leaves the processor more room than four. */
function addFourColumns(sums: Float64Array, from: number, { codes, shares }: FourColumns): void {
  const [a, b, c, d] = codes;
  for (let at = 0; at < sums.length; at += 1) {
    const row = from + at;
    const ab = (shares[a[row] ?? 0] ?? 0) + (shares[CODES + (b[row] ?? 0)] ?? 0);
    const cd = (shares[2 * CODES + (c[row] ?? 0)] ?? 0) + (shares[3 * CODES + (d[row] ?? 0)] ?? 0);
    sums[at] = (sums[at] ?? 0) + (ab + cd);
  }
}

function addByteColumn(sums: Float64Array, from: number, { codes, shares }: ByteColumn): void {
  for (let at = 0; at < sums.length; at += 1)
    sums[at] = (sums[at] ?? 0) + (shares[codes[from + at] ?? 0] ?? 0);
}

/** The same for two bytes a row: a loop of its own, for a loop that meets both widths is slow on either. */
function addWideColumn(sums: Float64Array, from: number, { codes, shares }: WideColumn): void {
  for (let at = 0; at < sums.length; at += 1)
    sums[at] = (sums[at] ?? 0) + (shares[codes[from + at] ?? 0] ?? 0);
}

/** Takes columns together by fours; up to three are left over. */
function groupColumns(
  columns: readonly ByteColumn[],
): Readonly<{ fours: readonly FourColumns[]; rest: readonly ByteColumn[] }> {
  const fours: FourColumns[] = [];
  const rest: ByteColumn[] = [];
  for (let i = 0; i < columns.length; i += 4) {
    const group = columns.slice(i, i + 4);
    const [a, b, c, d] = group;
    if (!a || !b || !c || !d) rest.push(...group);
    else {
      const shares = new Float64Array(4 * CODES);
      for (const [place, column] of group.entries()) shares.set(column.shares, place * CODES);
      fours.push({ codes: [a.codes, b.codes, c.codes, d.codes], shares });
    }
  }
  return { fours, rest };
}

function addByRow(sums: Float64Array, from: number, term: NumericTerm | TextTerm, totalWeight: number): void {
  const { similarityByRow, weight, expected } = term;
  const known = Math.max(0, Math.min(sums.length, similarityByRow.length - from));
  const expectedShare = shareOf(weight, expected, totalWeight);
  for (let at = 0; at < known; at += 1) {
    const similarity = similarityByRow[from + at] ?? Number.NaN;
    const share = Number.isNaN(similarity) ? expectedShare : shareOf(weight, similarity, totalWeight);
    sums[at] = (sums[at] ?? 0) + share;
  }
  for (let at = known; at < sums.length; at += 1) sums[at] = (sums[at] ?? 0) + expectedShare;
}

/** Every row starts with the expected share; the few that know the key are put right. */
function addFinding(sums: Float64Array, from: number, finding: FindingList): void {
  const { list, corrections } = finding;
  const { rows, outcomes, length } = list;
  const end = from + sums.length;
  let next = finding.next;
  while (next < length) {
    const row = rows[next] ?? end;
    if (row >= end) break;
    sums[row - from] = (sums[row - from] ?? 0) + (corrections[outcomes[next] ?? 0] ?? 0);
    next += 1;
  }
  finding.next = next;
}

function listFinding(term: FindingTerm, shares: Float64Array): FindingList {
  const expectedShare = shares[0] ?? 0;
  return { list: term.list, corrections: shares.map((share) => share - expectedShare), next: 0 };
}

/** The sums of a block of rows, 0..1, not rounded, that of row `from` first; rows that were removed hold what an all-unknown case would. */
export type ScoredBlock = Readonly<{ from: number; sums: Float64Array }>;

/**
 * Add up the shares of every row, block by block: columns four a pass, findings by their posting lists.
 * All shares and their differences lie on the grid of `toShareGrid`, where sums are exact: the order of the additions cannot show.
 *
 * @param compiled compiled against this table since it last changed.
 * @returns blocks by rising row, which together hold all rows; the next one is written over the one before.
 */
export function* scoreBlocks(
  table: CaseTable,
  { terms, totalWeight }: CompiledQuery,
): Generator<ScoredBlock, void, undefined> {
  const byteColumns: ByteColumn[] = [];
  const wideColumns: WideColumn[] = [];
  const byRow: (NumericTerm | TextTerm)[] = [];
  const findings: FindingList[] = [];
  let start = 0;
  for (const term of terms) {
    if (term.kind === "numeric" || term.kind === "text") byRow.push(term);
    else {
      const shares = sharesByCode(term, totalWeight);
      if (term.kind === "finding") {
        start += shares[0] ?? 0;
        findings.push(listFinding(term, shares));
      } else {
        const { codes } = term.column;
        if (codes instanceof Uint8Array) byteColumns.push({ codes, shares });
        else wideColumns.push({ codes, shares });
      }
    }
  }
  const { fours, rest } = groupColumns(byteColumns);
  const room = new Float64Array(Math.min(BLOCK_ROWS, table.rowCount));
  for (let from = 0; from < table.rowCount; from += BLOCK_ROWS) {
    const sums = room.subarray(0, Math.min(BLOCK_ROWS, table.rowCount - from));
    sums.fill(start);
    for (const four of fours) addFourColumns(sums, from, four);
    for (const column of rest) addByteColumn(sums, from, column);
    for (const column of wideColumns) addWideColumn(sums, from, column);
    for (const term of byRow) addByRow(sums, from, term, totalWeight);
    for (const finding of findings) addFinding(sums, from, finding);
    yield { from, sums };
  }
}
