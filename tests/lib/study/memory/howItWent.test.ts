import { describe, expect, it } from "vitest";
import { howItWent } from "@/lib/study/memory/howItWent";
import { session } from "./sessions";

describe("how a session went", () => {
  it.each([
    ["missed", { verdict: "missed", score: 0.6 }],
    ["nearly", { verdict: "among them", score: 0.3 }],
    // Sure of 40 in 100 and right: 0.6 squared, twice.
    ["nearly", { verdict: "right", score: 0.72 }],
    // Half sure and right: 0.5, which is knowledge and doubt in equal parts.
    ["got it", { verdict: "right", score: 0.5 }],
    ["got it", { verdict: "right", score: 0.32 }],
    ["got it cleanly", { verdict: "right", score: 0.18 }],
    ["got it", { verdict: "right", score: 0.18, tooSoon: 1 }],
    // 12 and 2 at stake are more than the record's 12 and 1.
    ["got it", { verdict: "right", score: 0.18, minutes: 12, atStake: 2 }],
    ["got it cleanly", { verdict: "right", score: 0.18, minutes: 11, atStake: 2 }],
    ["got it", { verdict: "right", score: 0, checks: 0, minutes: 0, atStake: 0 }],
  ] as const)("is '%s' for %o", (words, fields) => {
    expect(howItWent(session(fields))).toBe(words);
  });
});
