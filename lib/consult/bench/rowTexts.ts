import type { CaseTable } from "../../similarity/caseTable";
import { growTo } from "../../similarity/growTo";
import type { WordPostings } from "../../text/postings/wordPostings";

/**
 * Under which number the text of each row of a case table stands in the postings, so that no question has to look up ids.
 * Written by `numberTexts` only.
 */
export interface RowTexts {
  /** By row, -1 where no text was found; may be longer than the table. */
  numbers: Int32Array;
  rowCount: number;
}

/** The numbers of no rows. */
export const makeRowTexts = (): RowTexts => ({ numbers: new Int32Array(0), rowCount: 0 });

/**
 * Looks up the texts of the rows that are new in the table. A case that comes in again gets a row of its own, and one that
 * was removed is not asked about any more: what was looked up before stays true.
 */
export function numberTexts(texts: RowTexts, { ids, rowCount }: CaseTable, { numberOf }: WordPostings): void {
  texts.numbers = growTo(texts.numbers, rowCount, (length) => new Int32Array(length));
  for (let row = texts.rowCount; row < rowCount; row += 1)
    texts.numbers[row] = numberOf.get(ids[row] ?? "") ?? -1;
  texts.rowCount = rowCount;
}
