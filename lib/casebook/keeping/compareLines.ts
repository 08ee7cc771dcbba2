/** A line of two versions: in both, or in one of them only. */
export type ComparedLine = Readonly<{ left: string | undefined; right: string | undefined; same: boolean }>;

/** Beyond so many pairs of lines the middle of two versions is shown as changed as a whole. */
const mostPairs = 4_000_000;

/**
 * Lays two versions side by side: the lines of both in their order, those of a longest common subsequence on one row, and in
 * between what only one has, paired off from above.
 *
 * @returns rows; the left column read from above is the left version, the right column the right one
 * Source: Wagner & Fischer 1974, The String-to-String Correction Problem (longest common subsequence by dynamic programming).
 */
export function compareLines(leftText: string, rightText: string): ComparedLine[] {
  const [left, right] = [linesOf(leftText), linesOf(rightText)];
  const rows: ComparedLine[] = [];
  let [l, r] = [0, 0];
  const upTo = (leftEnd: number, rightEnd: number) => {
    while (l < leftEnd || r < rightEnd) {
      const row = { left: l < leftEnd ? left[l] : undefined, right: r < rightEnd ? right[r] : undefined };
      rows.push({ ...row, same: false });
      if (l < leftEnd) l += 1;
      if (r < rightEnd) r += 1;
    }
  };
  for (const [atLeft, atRight] of commonLines(left, right)) {
    upTo(atLeft, atRight);
    rows.push({ left: left[l], right: right[r], same: true });
    l += 1;
    r += 1;
  }
  upTo(left.length, right.length);
  return rows;
}

const linesOf = (text: string) => (text === "" ? [] : text.replace(/\n$/, "").split("\n"));

/** The places of a longest common subsequence of lines, in order. */
function commonLines(left: readonly string[], right: readonly string[]): [number, number][] {
  let start = 0;
  while (start < left.length && start < right.length && left[start] === right[start]) start += 1;
  let tail = 0;
  const isTailSame = () =>
    tail < Math.min(left.length, right.length) - start && left.at(-1 - tail) === right.at(-1 - tail);
  while (isTailSame()) tail += 1;
  const [rows, columns] = [left.length - tail - start, right.length - tail - start];
  const head = Array.from({ length: start }, (_, at): [number, number] => [at, at]);
  const foot = Array.from({ length: tail }, (_, at): [number, number] => [
    left.length - tail + at,
    right.length - tail + at,
  ]);
  if (rows * columns > mostPairs) return [...head, ...foot];
  const width = columns + 1;
  const longest = new Uint32Array((rows + 1) * width);
  const at = (row: number, column: number) => longest[row * width + column] ?? 0;
  for (let row = rows - 1; row >= 0; row--) {
    for (let column = columns - 1; column >= 0; column--) {
      longest[row * width + column] =
        left[start + row] === right[start + column]
          ? 1 + at(row + 1, column + 1)
          : Math.max(at(row + 1, column), at(row, column + 1));
    }
  }
  const middle: [number, number][] = [];
  for (let row = 0, column = 0; row < rows && column < columns; ) {
    if (left[start + row] === right[start + column]) middle.push([start + row++, start + column++]);
    else if (at(row + 1, column) >= at(row, column + 1)) row += 1;
    else column += 1;
  }
  return [...head, ...middle, ...foot];
}
