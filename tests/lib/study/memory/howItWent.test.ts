import { describe, expect, it } from "vitest";
import { howItWent } from "@/lib/study/memory/howItWent";
import { session } from "./sessions";

describe("how a session went", () => {
  it.each([
    ["missed", { verdict: "missed", score: 0.6 }],
    ["nearly", { verdict: "among them", score: 0.25 }],
    // Sure of 40 in 100 and right: 0.6 squared, and what is spread over forty others.
    ["nearly", { verdict: "right", score: 0.369 }],
    // Half sure and right: knowledge and doubt in equal parts.
    ["got it", { verdict: "right", score: 0.2563 }],
    ["got it", { verdict: "right", score: 0.164 }],
    ["got it cleanly", { verdict: "right", score: 0.0923 }],
    ["got it", { verdict: "right", score: 0.0923, tooSoon: 1 }],
    // 12 and 2 at stake are more than the record's 12 and 1.
    ["got it", { verdict: "right", score: 0.0923, minutes: 12, atStake: 2 }],
    ["got it cleanly", { verdict: "right", score: 0.0923, minutes: 11, atStake: 2 }],
    ["got it", { verdict: "right", score: 0, checks: 0, minutes: 0, atStake: 0 }],
  ] as const)("is '%s' for %o", (words, fields) => {
    expect(howItWent(session(fields))).toBe(words);
  });
});
