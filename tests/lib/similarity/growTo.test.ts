import { expect, it } from "vitest";
import { growTo } from "@/lib/similarity/growTo";

const make = (length: number) => new Float64Array(length);

it("an array with room stays itself, a full one doubles and keeps what it holds", () => {
  const full = Float64Array.from({ length: 20 }, (_, i) => i);
  expect(growTo(full, 20, make)).toBe(full);
  const wider = growTo(full, 21, make, -1);
  expect(wider.length).toBe(40);
  expect([...wider.subarray(0, 20)]).toEqual([...full]);
  expect(new Set(wider.subarray(20))).toEqual(new Set([-1]));
});

it("an empty array grows at once to what is needed", () => {
  expect(growTo(make(0), 1, make).length).toBe(16);
  expect(growTo(make(0), 100, make).length).toBe(100);
});
