import { describe, expect, it } from "vitest";
import { pickCase } from "@/lib/study/jobs/pickCase";

const ids = ["24-001", "24-002", "24-003", "24-004"];
const order = (some: readonly string[], seed: number) => some.map((_, turn) => pickCase(some, seed, turn));

describe("the case whose turn it is", () => {
  it("comes once before any comes again, and then in the same order", () => {
    expect(new Set(order(ids, 5)).size).toBe(4);
    expect(pickCase(ids, 5, 4)).toBe(pickCase(ids, 5, 0));
  });

  it("hangs on the seed and not on the order in which the cases are given", () => {
    expect(order([...ids].reverse(), 5)).toEqual(order(ids, 5));
    const seeds = Array.from({ length: 20 }, (_, seed) => order(ids, seed).join());
    expect(new Set(seeds).size).toBeGreaterThan(5);
  });

  it("leaves the others in their order when a case joins", () => {
    const joined = order([...ids, "24-005"], 5).filter((id) => id !== "24-005");
    expect(joined).toEqual(order(ids, 5));
  });

  it("favours no case: each is first in about a quarter of the sittings", () => {
    const first = Array.from({ length: 4000 }, (_, seed) => pickCase(ids, seed, 0));
    for (const id of ids) {
      const share = first.filter((one) => one === id).length / first.length;
      expect(share).toBeGreaterThan(0.22);
      expect(share).toBeLessThan(0.28);
    }
  });

  it("is none where there is none", () => {
    expect(pickCase([], 5, 0)).toBeUndefined();
  });
});
