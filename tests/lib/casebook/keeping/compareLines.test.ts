import fc from "fast-check";
import { expect, it } from "vitest";
import { compareLines } from "@/lib/casebook/keeping/compareLines";

const same = (line: string) => ({ left: line, right: line, same: true });

it("lines that both have stand on one row, the others beside each other", () => {
  expect(compareLines("a\nb\nc\n", "a\nx\nc\nd\n")).toEqual([
    same("a"),
    { left: "b", right: "x", same: false },
    same("c"),
    { left: undefined, right: "d", same: false },
  ]);
});

it("each column read from above is its version, and what counts as the same is the same", () => {
  const text = fc.array(fc.constantFrom("a", "b", "c", "d"), { minLength: 1, maxLength: 12 });
  fc.assert(
    fc.property(text, text, (left, right) => {
      const rows = compareLines(left.join("\n"), right.join("\n"));
      expect(rows.flatMap((row) => (row.left === undefined ? [] : [row.left]))).toEqual(left);
      expect(rows.flatMap((row) => (row.right === undefined ? [] : [row.right]))).toEqual(right);
      expect(rows.every((row) => !row.same || row.left === row.right)).toBe(true);
    }),
  );
});
