import { describe, expect, it } from "vitest";
import { readCase } from "@/lib/casebook/readCase";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { planText } from "../importing";

const head = "No,Horn,In,Out,Problem,Cause,Part,Result,Minutes,Charge";
const good = "19/4,cnt,2019-04-03,2019-04-05,sticks,oil gone to gum,valve 2,done,45,30";
const plan = (rows: readonly string[], options?: Parameters<typeof planText>[1]) =>
  planText([head, ...rows].join("\n"), options);
const faultsOf = ({ refused }: ReturnType<typeof plan>) =>
  refused.flatMap(({ line, faults }) =>
    faults.map(({ column, received, expected }) => `${line} ${column}: ${received}; ${expected}`),
  );
const caseOf = (text: string) => readCase(text, "a.md", smallVocabulary);

describe("a row of old jobs", () => {
  it("becomes a whole case file that holds", () => {
    const { ready, refused } = plan([good]);
    expect(refused).toEqual([]);
    expect(ready).toMatchObject([
      { line: 2, id: "19-4", status: "closed", instrument: "cornet", remarks: ["'19/4' is written 19-4"] },
    ]);
    expect(caseOf(ready[0]?.text ?? "").case).toMatchObject({
      id: "19-4",
      title: "Cornet: sticks",
      received: "2019-04-03",
      closed: "2019-04-05",
      causes: [{ cause: "gummed-oil", part: "valve 2", role: "root" }],
      outcome: "fixed",
      minutes: 45,
      charge: 30,
    });
  });

  it("that cannot be taken in tells everything that is wrong with it, by its columns", () => {
    expect(faultsOf(plan(["1,violin,2019-02-30,2019-04-05,,what,valve 9,so so,much,30"]))).toEqual([
      "2 Horn: 'violin'; an instrument that the vocabulary knows",
      "2 In: '2019-02-30'; a day, such as 2019-03-09",
      "2 Minutes: 'much'; a time, such as 45 or 1:20",
      "2 Cause: 'what'; a known cause, by its name or id",
      "2 Result: 'so so'; fixed, improved, not-fixed or declined",
      "2 Problem: nothing; words",
    ]);
    expect(faultsOf(plan([good.replace("valve 2", "valve 7")]))).toEqual([
      "2 Part: 'valve 7'; a number from 1 to 3 on this instrument",
    ]);
    expect(faultsOf(plan([good.replaceAll("2019", "2029")]))[0]).toContain(
      "a day that is not ahead of today",
    );
  });

  it("does not keep the others out", () => {
    const { ready, refused } = plan(["1,violin,,,,,,,,", good.replace("19/4", "5"), good]);
    expect([ready.map(({ line }) => line), refused.map(({ line }) => line)]).toEqual([[3, 4], [2]]);
  });

  it("that says too little for a finished case is refused, or an open sheet where that is wished", () => {
    const row = good.replace("oil gone to gum", "gunk").replace(",45,", ",,");
    expect(faultsOf(plan([row]))).toEqual([
      "2 Cause: 'gunk'; a known cause, by its name or id",
      "2 Minutes: nothing; the minutes that the job took",
    ]);
    const { ready } = plan([row], { incomplete: "open" });
    expect(ready[0]?.status).toBe("open");
    const { case: kase } = caseOf(ready[0]?.text ?? "");
    expect(kase).toMatchObject({ status: "open", outcome: "fixed" });
    expect(kase?.story).toBe("Root cause: gunk\n\nTroubled part: valve 2");
  });

  it("needs no cause where the customer declined", () => {
    expect(plan(["1,cnt,2019-04-03,2019-04-05,sticks,,,declined,5,"]).ready).toHaveLength(1);
  });
});

describe("dates and numbers of a file", () => {
  it("that can be read in two ways are refused with both, and read once somebody says how", () => {
    const row = good.replace("2019-04-03", "03/04/2019").replace(",30", ',"1,250"');
    expect(faultsOf(plan([row]))).toEqual([
      "2 In: '03/04/2019'; the year first, or say the order of dates: this can be 2019-04-03 or 2019-03-04",
      "2 Charge: '1,250'; no mark for thousands, or say the decimal mark: this can be 1250 or 1.25",
    ]);
    const said = caseOf(plan([row], { dates: "mdy", decimal: "point" }).ready[0]?.text ?? "").case;
    expect(said).toMatchObject({ received: "2019-03-04", charge: 1250 });
  });

  it("are read as another row of the file proves, which is told", () => {
    const two = [
      good.replace("2019-04-03", "03/04/2019"),
      good.replace("2019-04-03", "23/03/2019").replace("19/4", "5"),
    ];
    const { ready, dates } = plan(two);
    expect(dates).toEqual({ kind: "proven", way: "dmy", line: 3, text: "23/03/2019" });
    expect(ready.map(({ received }) => received)).toEqual(["2019-04-03", "2019-03-23"]);
  });
});

describe("the number of a job", () => {
  it("that a case or an earlier row has is refused; nothing is overwritten", () => {
    const cases = [makeCase({ id: "19-4" })];
    expect(faultsOf(plan([good], { cases }))).toEqual([
      "2 No: '19-4', which another case has; a number of its own",
    ]);
    expect(faultsOf(plan([good, good]))).toEqual(["3 No: '19-4', as in line 2; a number of its own"]);
  });

  it("is the next of its year where the row has none, past those in the casebook and in the file", () => {
    const rows = [",cnt", ",cnt", "19-007,cnt", ",euph"].map(
      (start, at) => `${start},2019-04-0${at + 1},2019-04-05,sticks,gummed oil,,fixed,45,30`,
    );
    const cases = [makeCase({ id: "19-003" }), makeCase({ id: "20-900" })];
    expect(plan(rows, { cases, incomplete: "open" }).ready.map(({ id }) => id)).toEqual([
      "19-008",
      "19-009",
      "19-007",
      "19-010",
    ]);
  });

  it("is not needed to know a job again: the same table brings nothing in twice, two alike on one day stay two", () => {
    const row = ",cnt,2019-04-03,2019-04-05,Sticks,oil gone to gum,,fixed,45,30";
    const first = plan([row, row]);
    expect(first.ready.map(({ id }) => id)).toEqual(["19-001", "19-002"]);
    const [one, two] = first.ready.map(({ text }) => caseOf(text).case);
    if (!one || !two) throw new Error("both cases must hold; see the test above");
    expect(faultsOf(plan([row, row], { cases: [one, two] }))).toEqual([
      "2 : the job that is case 19-001 already; new jobs only",
      "3 : the job that is case 19-002 already; new jobs only",
    ]);
    expect(plan([row, row], { cases: [one] }).ready.map(({ line, id }) => [line, id])).toEqual([
      [3, "19-002"],
    ]);
  });
});

describe("what holds for a whole file", () => {
  it("is told: without a column for it the day taken in stands for the day closed", () => {
    const { ready, notes } = planText(
      "Horn,In,Problem,Cause,Result,Minutes\ncnt,2019-04-03,sticks,gummed oil,fixed,5",
      {
        incomplete: "open",
      },
    );
    expect(notes).toEqual(["No column says when a job was closed: the day it was taken in stands for it."]);
    expect(caseOf(ready[0]?.text ?? "").case?.closed).toBe("2019-04-03");
  });

  it("goes into the story by its headings where several columns are notes", () => {
    const { ready } = planText(
      "Horn,In,Problem,Result,Minutes,Notes,Work done\ncnt,2019-04-03,sticks,declined,5,--- odd,oiled",
    );
    expect(caseOf(ready[0]?.text ?? "").case?.story).toBe("Notes: --- odd\n\nWork done: oiled");
  });
});
