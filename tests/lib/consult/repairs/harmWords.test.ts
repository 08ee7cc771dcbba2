import { describe, expect, it } from "vitest";
import type { LikeJobs } from "@/lib/consult/answer";
import { harmWords } from "@/lib/consult/repairs/harmWords";

const like = (
  harmed: number,
  done: number,
  low: number,
  high: number,
  family: string | null = null,
): LikeJobs => ({
  harmed,
  done,
  low,
  high,
  among: family === null ? "like" : "family",
  family,
});

describe("the odds of a repair in words", () => {
  it("give the count and both bounds", () => {
    expect(harmWords(like(2, 14, 0.0309, 0.3849))).toBe(
      "2 of 14 jobs like this one went wrong; fairly sure between 3 and 38 in a hundred",
    );
  });

  it("give one bound only where the other is never or always", () => {
    expect(harmWords(like(0, 20, 0, 0.1166))).toBe(
      "None of 20 jobs like this one went wrong; fairly sure under 12 in a hundred",
    );
    expect(harmWords(like(1, 1, 0.1467, 1))).toBe(
      "1 of 1 job like this one went wrong; fairly sure over 15 in a hundred",
    );
  });

  it("say which jobs were counted where too few are like it", () => {
    expect(harmWords(like(3, 40, 0.0213, 0.1892, "Piston-valve brass"))).toBe(
      "3 of 40 jobs on piston-valve brass went wrong; fairly sure between 2 and 19 in a hundred",
    );
    expect(harmWords({ ...like(3, 40, 0.0213, 0.1892), among: "all" })).toContain("3 of 40 jobs of any kind");
  });

  it("never round a chance down to none", () => {
    expect(harmWords(like(1, 9000, 0.00001, 0.0005))).toContain("between less than 1 and less than 1 in");
  });

  it("say so where it was never done", () => {
    expect(harmWords(null)).toContain("no case yet");
  });
});
