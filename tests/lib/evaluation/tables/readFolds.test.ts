import { expect, it } from "vitest";
import { readFolds } from "@/lib/evaluation/tables/readFolds";

const rows = { rowCount: 3, classOf: (row: number) => ["p", "q", undefined][row] };

it("gives every row its fold, in whatever order they stand", () => {
  expect([...readFolds("row,fold,class\n2,1,x\n0,0,p\n1,1,q\n", "f.csv", rows)]).toEqual([0, 1, 1]);
});

it.each([
  [
    "more rows than the data",
    "row,fold\n0,0\n1,1\n2,0\n3,1\n",
    /^f\.csv:5 row: found "3"; write a row of the data, 0 to 2/,
  ],
  ["a row too few", "row,fold\n0,0\n1,1\n", /found none for row 2/],
  ["a row twice", "row,fold\n0,0\n0,1\n", /^f\.csv:3 row: found 0 again/],
  ["a fold that is no number", "row,fold\n0,first\n", /^f\.csv:2 fold: found "first"/],
  ["one fold only", "row,fold\n0,0\n1,0\n2,0\n", /found fewer than two/],
  ["the classes of another file", "row,fold,class\n0,0,q\n", /^f\.csv:2 class: found "q"; write "p"/],
])("refuses %s and says what to write", (_, text, message) => {
  expect(() => readFolds(text, "f.csv", rows)).toThrow(message);
});
