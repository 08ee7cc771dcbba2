import { expect, it } from "vitest";
import { unknownKeys } from "@/lib/consult/unknownKeys";

it("names the keys that nothing reads, with the one that was probably meant", () => {
  expect(unknownKeys({ says: "2nd valve hangs", swap: [] })).toEqual([
    "the key 'swap' is not read; did you mean 'swaps'?",
  ]);
  expect(unknownKeys([{ says: "stuck" }, { says: "stuck", weather: "wet" }])).toEqual([
    "problem 2: the key 'weather' is not read",
  ]);
  expect(unknownKeys({ id: 1, instrument: "tuba", says: "x", evidence: [], gauges: [] })).toEqual([]);
  expect(unknownKeys(null)).toEqual([]);
});
