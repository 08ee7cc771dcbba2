import { describe, expect, it } from "vitest";
import { countOutcomes } from "@/lib/consult/record/countOutcomes";
import { judgeTells } from "@/lib/consult/record/judgeTells";
import { seenFindings } from "@/lib/consult/record/seenFindings";
import { wordsInQuestion } from "@/lib/consult/record/wordsInQuestion";
import { repairMinutes } from "@/lib/consult/repairs/repairMinutes";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const oil = { cause: "gummed-oil", role: "root" };
const dent = { cause: "casing-dented", role: "root" };
const travel = (found: string, valve = 1) => ({ check: "valve-travel", part: `valve ${valve}`, found });
const oiled = (minutes: number) => ({ repair: "clean-and-oil", result: "fixed", minutes });
const job = (id: string, causes: readonly unknown[], path: readonly unknown[]) =>
  makeCase({ id, status: "closed", outcome: "fixed", instrument: "cornet", causes, path });

const cases = [
  job("a", [oil], [travel("drags"), oiled(10), travel("free")]),
  // The second valve is sound: a sibling of the troubled one.
  job("b", [oil], [travel("free", 2), travel("hangs", 1), oiled(20)]),
  job("c", [oil, { cause: "casing-dented", role: "contributing" }], [travel("drags"), oiled(5), oiled(7)]),
  job("d", [dent], [travel("hangs")]),
  job("e", [oil], []),
  makeCase({ id: "f", instrument: "cornet", causes: [oil], path: [travel("drags"), oiled(90)] }),
];

describe("what was found with each root cause", () => {
  const seen = seenFindings(cases, smallVocabulary);

  it("counts finished jobs once a finding, before the cure, siblings apart; other roles do not count", () => {
    // Oil: a and c drag, b hangs; e was not looked at, f is open. The dent of c was no root.
    expect(seen.get("gummed-oil")?.get("valve-travel")).toEqual(
      new Map([
        ["drags", 2],
        ["hangs", 1],
      ]),
    );
    expect(seen.get("gummed-oil")?.get("valve-travel@others")).toEqual(new Map([["free", 1]]));
    expect(seen.get("casing-dented")?.get("valve-travel")).toEqual(new Map([["hangs", 1]]));
  });

  it("stands beside the handbook's words", () => {
    const cause = smallVocabulary.causes.get("gummed-oil");
    // The handbook: drags usually, free never.
    expect(cause && judgeTells(cause, seen.get("gummed-oil"))).toMatchObject([
      { outcome: "drags", word: "usually", seen: 2, looked: 3, verdict: { kind: "few" } },
      { outcome: "free", word: "never", seen: 0, looked: 3, verdict: { kind: "few" } },
    ]);
  });

  it("is counted over all causes for a check", () => {
    expect(countOutcomes(cases, "valve-travel", smallVocabulary)).toEqual(
      new Map([
        ["drags", 2],
        ["hangs", 2],
      ]),
    );
  });
});

describe("the words in question", () => {
  it("are those that enough cases contradict, and no others", () => {
    // Of 8 jobs with gummed oil 7 ran free (never, by the handbook) and one dragged (usually).
    const free = Array.from({ length: 8 }, (_, at) =>
      job(`g-${at}`, [oil], [travel(at === 0 ? "drags" : "free")]),
    );
    const { off, judged, told } = wordsInQuestion(free, smallVocabulary);
    expect(off).toMatchObject([
      { cause: "gummed-oil", outcome: "drags", word: "usually", seen: 1, looked: 8, proposed: "rarely" },
      { cause: "gummed-oil", outcome: "free", word: "never", seen: 7, looked: 8, proposed: "usually" },
    ]);
    // Two words of the oil were judged, two of the dent have no case.
    expect([judged, told]).toEqual([2, 4]);
  });
});

describe("how long a repair took", () => {
  it("adds up its steps in a job and leaves out what is open or was not timed", () => {
    // 10, 20 and 5 + 7 = 12: half of them within 12.
    expect(repairMinutes(cases, "clean-and-oil")).toMatchObject({ cases: 3, p50: 12 });
    expect(repairMinutes(cases, "ease-casing")).toBeUndefined();
  });
});
