import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { type OpenCheck, rankChecks } from "@/lib/diagnosis/rankChecks";

const check = (id: string, gainBits: number, minutes: number, riskClass: number): OpenCheck => ({
  id,
  gainBits,
  minutes,
  riskClass,
});
const ids = (checks: readonly OpenCheck[]) => rankChecks(checks).map(({ id }) => id);

describe("rankChecks", () => {
  it("puts what tells more, takes less and risks less before what does not", () => {
    expect(ids([check("a", 0.2, 2, 0), check("b", 0.4, 2, 0)])).toEqual(["b", "a"]);
    expect(ids([check("a", 0.4, 9, 0), check("b", 0.4, 2, 0)])).toEqual(["b", "a"]);
    expect(ids([check("a", 0.4, 2, 2), check("b", 0.4, 2, 0)])).toEqual(["b", "a"]);
  });

  it("lets a risky check wait behind every safe one while a safe one tells nearly as much", () => {
    // By bits for minutes alone the risky check would come first: the safe ones take hours.
    for (const riskClass of [3, 4]) {
      const list = [
        check("risky", 1, 0, riskClass),
        check("slow", 0.95, 600, 2),
        check("little", 0.05, 600, 0),
      ];
      expect(ids(list)).toEqual(["slow", "little", "risky"]);
    }
  });

  it("says which checks wait for a safer one", () => {
    const waiting = (list: readonly OpenCheck[]) =>
      rankChecks(list)
        .filter(({ waits }) => waits)
        .map(({ id }) => id);
    expect(waiting([check("risky", 1, 0, 3), check("safe", 0.7, 60, 2)])).toEqual(["risky"]);
    expect(waiting([check("risky", 1, 0, 3), check("safe", 0.69, 60, 2)])).toEqual([]);
  });

  it("lets a risky check compete when no safe one tells nearly as much", () => {
    expect(ids([check("risky", 1, 0, 3), check("little", 0.05, 600, 0)])).toEqual(["risky", "little"]);
  });

  it("does not let a risky check wait for another risky one", () => {
    expect(ids([check("heat", 1, 0, 3), check("force", 1, 600, 3)])).toEqual(["heat", "force"]);
  });

  it("leaves out what would tell next to nothing", () => {
    expect(ids([check("a", 0, 1, 0), check("b", 0.0001, 1, 0)])).toEqual([]);
  });

  it("does not care in which order the checks stand, ties going by id", () => {
    const checks = fc.uniqueArray(
      fc.record({
        id: fc.constantFrom(..."abcdefgh"),
        gainBits: fc.constantFrom(0.005, 0.1, 0.5, 0.6, 1),
        minutes: fc.constantFrom(0, 2, 2, 10),
        riskClass: fc.integer({ min: 0, max: 4 }),
      }),
      { selector: ({ id }) => id, maxLength: 8 },
    );
    fc.assert(
      fc.property(checks, (list) => {
        const ranked = rankChecks(list);
        expect(rankChecks(list.toReversed())).toEqual(ranked);
        const first = ranked.findIndex(({ riskClass }) => riskClass >= 3);
        const later = first < 0 ? [] : ranked.slice(first + 1).filter(({ riskClass }) => riskClass < 3);
        const bits = ranked[first]?.gainBits ?? 0;
        // A safe check that comes after a risky one tells well less than it.
        for (const safe of later) expect(safe.gainBits).toBeLessThan(bits);
      }),
    );
  });
});
