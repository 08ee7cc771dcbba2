import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { type Bench, buildBench, takeInCase } from "@/lib/consult/bench/bench";
import { withoutCase } from "@/lib/consult/bench/withoutCase";
import { consult } from "@/lib/consult/consult";
import { type ProblemInput, problemSchema } from "@/lib/consult/problem";
import { searchText } from "@/lib/text/searchText";
import { smallVocabulary } from "../../reading/smallVocabulary";
import { expectAlike } from "../expectAlike";
import {
  dentCase,
  dirtCase,
  secondDentCase,
  smallCase,
  smallCasebook,
  smallCases,
  springCase,
} from "../smallCasebook";

const benchOf = (cases: readonly Case[]) => buildBench(smallVocabulary, smallCasebook(cases));
const problems: readonly ProblemInput[] = [
  { instrument: "trumpet", says: "2nd valve hangs, it was dropped. Other two run free" },
  { instrument: "trumpet", says: "smells of old oil, all drag. lime" },
  { says: "comes up slowly, stairs" },
  { instrument: "trumpet", evidence: [{ check: "spring-look", found: "short" }] },
  {
    instrument: "trumpet",
    says: "2nd valve hangs",
    swaps: [{ a: "piston 2", b: "casing 1", result: "free" }],
  },
];
const ask = (bench: Bench, input: ProblemInput) => consult(problemSchema.parse(input), bench);
const expectSameAnswers = (one: Bench, other: Bench) => {
  for (const problem of problems) expectAlike(ask(one, problem), ask(other, problem));
};

const newCase = smallCase("2-1", {
  complaint: "Third valve hangs, the mouthpiece of the marching band was kicked across the pitch.",
  path: [
    { check: "travel", found: "hangs", part: "valve 3" },
    { check: "knock", found: "dropped" },
    { check: "casing-look", found: "dented", part: "casing 3" },
  ],
  causes: [{ cause: "dent", role: "root" }],
  received: "2026-04-01",
  closed: "2026-04-01",
});
const sheetOf = (kase: Case): Case => ({
  ...kase,
  status: "open",
  complaint: "Something else, oil and stairs.",
});

describe("whoever holds a bench from before a case was taken in", () => {
  it("sees it in all of the bench: cases, words, table and model never tell of different ones", () => {
    const before = benchOf(smallCases);
    const after = takeInCase(before, newCase);
    expectSameAnswers(before, after);
    expectSameAnswers(before, benchOf([...smallCases, newCase]));
    expect(before.cases.get("2-1")).toBe(newCase);
  });

  it("meets every case once in a loop that waits between its turns, whatever is taken in meanwhile", async () => {
    const bench = benchOf(smallCases);
    const met: string[] = [];
    for (const { id } of bench.cases.values()) {
      met.push(id);
      await Promise.resolve();
      takeInCase(bench, { ...dentCase, title: `Version ${met.length}` });
    }
    expect(met).toEqual(smallCases.map(({ id }) => id));
  });

  it("keeps the case that it got: a new version is another object", () => {
    const bench = benchOf(smallCases);
    const held = bench.cases.get("1-1");
    takeInCase(bench, { ...dentCase, title: "Another title" });
    expect(held).toBe(dentCase);
    expect(held?.title).toBe("Case 1-1");
  });
});

describe("buildBench", () => {
  it("takes a case that tells of the siblings of a part that is not numbered", () => {
    const others = smallCase("5-1", {
      path: [{ check: "bell-look", found: "straight", part: "other bell" }],
      causes: [{ cause: "dent", role: "root" }],
    });
    expect(benchOf([...smallCases, others]).cases.has("5-1")).toBe(true);
  });
});

describe("takeInCase", () => {
  it("finds the new case as like, and by its words", () => {
    const bench = takeInCase(benchOf(smallCases), newCase);
    expect(bench.cases.get("2-1")).toBe(newCase);
    const like = ask(bench, {
      instrument: "trumpet",
      says: "3rd valve hangs, the marching band dropped it. dents",
    }).similar;
    expect(like[0]?.case).toBe("2-1");
    const words = ask(bench, { says: "kicked across the pitch" }).similar;
    expect(words[0]?.case).toBe("2-1");
    expect(searchText(bench.text, "kicked").map(({ id }) => id)).toEqual(["2-1"]);
  });

  it("answers as a bench built anew", () => {
    expectSameAnswers(takeInCase(benchOf(smallCases), newCase), benchOf([...smallCases, newCase]));
  });

  it("puts a new version in place of the old as if the old had never been", () => {
    const changed = smallCase("1-1", {
      complaint: "First valve drags since it was washed.",
      path: [{ check: "deposits", found: "lime", part: "piston 1" }],
      causes: [{ cause: "dirt", role: "root" }],
      minutes: 20,
    });
    const bench = takeInCase(benchOf(smallCases), changed);
    expectSameAnswers(bench, benchOf([changed, dirtCase, springCase, secondDentCase]));
    expectSameAnswers(takeInCase(bench, dentCase), benchOf(smallCases));
  });

  it("changes nothing when the same case comes twice", () => {
    expectSameAnswers(
      takeInCase(takeInCase(benchOf(smallCases), newCase), newCase),
      benchOf([...smallCases, newCase]),
    );
  });

  it("learns nothing from a sheet while the job is open, and all of it once it is closed", () => {
    const sheet = sheetOf(newCase);
    let bench = takeInCase(takeInCase(benchOf(smallCases), sheet), sheet);
    expect(bench.cases.has("2-1")).toBe(false);
    expectSameAnswers(bench, benchOf([...smallCases, sheet]));
    bench = takeInCase(bench, newCase);
    expectSameAnswers(bench, benchOf([...smallCases, newCase]));
  });

  it("forgets a case that is opened again", () => {
    const reopened = sheetOf(secondDentCase);
    let bench = takeInCase(benchOf(smallCases), reopened);
    expect(bench.cases.has("1-4")).toBe(false);
    expectSameAnswers(bench, benchOf([dentCase, dirtCase, springCase, reopened]));
    bench = takeInCase(bench, secondDentCase);
    expectSameAnswers(bench, benchOf(smallCases));
  });
});

describe("buildBench, whatever the order", () => {
  it("does not care in which order the cases lie", () => {
    expectSameAnswers(benchOf(smallCases), benchOf(smallCases.toReversed()));
  });

  it("serves without a single case", () => {
    const answer = ask(benchOf([]), { instrument: "trumpet", says: "2nd valve hangs" });
    expect(answer.similar).toEqual([]);
    expect(answer.estimate).toBeNull();
    expect(answer.causes.length).toBeGreaterThan(0);
  });
});

describe("withoutCase", () => {
  it("asks as if the case had never been learned, and puts it back", () => {
    const bench = benchOf(smallCases);
    const jobs = () => bench.model.causes.map((_, row) => bench.model.jobsOf(row));
    const fewer = benchOf([dirtCase, springCase, secondDentCase]).model;
    const before = jobs();
    expect(withoutCase(bench, dentCase, jobs)).toEqual(fewer.causes.map((_, row) => fewer.jobsOf(row)));
    expect(jobs()).toEqual(before);
    expect(() =>
      withoutCase(bench, dentCase, () => {
        throw new Error("no answer");
      }),
    ).toThrow("no answer");
    expect(jobs()).toEqual(before);
  });

  it("takes nothing away for a case that was never learned", () => {
    const bench = benchOf([dirtCase]);
    expect(withoutCase(bench, dentCase, () => bench.model.jobsOf(0))).toBe(bench.model.jobsOf(0));
  });
});
