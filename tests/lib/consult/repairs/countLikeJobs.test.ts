import { describe, expect, it } from "vitest";
import { openBench } from "@/lib/consult/bench/openBench";
import { countLikeJobs, type JobInView } from "@/lib/consult/repairs/countLikeJobs";
import { firstHarms, noRecord, type RepairRecord, recordRepairs } from "@/lib/consult/repairs/repairRecords";
import { smallCase } from "../smallCasebook";

const { vocabulary } = openBench({}).bench;
const job = (id: string, instrument: string, what?: string) =>
  smallCase(id, {
    instrument,
    received: `2026-01-${id.padStart(2, "0")}`,
    closed: "2026-02-28",
    path: [{ repair: "resolder-joint", result: "fixed" }],
    causes: [{ cause: "cracked-joint", role: "root" }],
    harms: what ? [{ repair: "resolder-joint", what, paidBy: "shop" }] : [],
  });
const jobs = [
  job("1", "trumpet"),
  job("2", "cornet", "A brace let go beside it."),
  job("3", "cornet"),
  job("4", "alto-saxophone", "The lacquer burned."),
];
const recordOf = (cases: readonly ReturnType<typeof job>[]) => {
  const records = new Map<string, RepairRecord>();
  for (const kase of cases) recordRepairs(records, kase);
  return records.get("resolder-joint") ?? noRecord;
};

const many = (count: number, from: number, instrument: string, harmed = 0) =>
  Array.from({ length: count }, (_, at) =>
    job(String(from + at), instrument, at < harmed ? "A brace let go beside it." : undefined),
  );
const count = (cases: readonly ReturnType<typeof job>[], view: Partial<JobInView>) =>
  countLikeJobs({ id: "resolder-joint", record: recordOf(cases) }, vocabulary, {
    instrument: undefined,
    like: [],
    ...view,
  });

describe("countLikeJobs", () => {
  const brass = many(6, 1, "cornet", 1);
  const reeds = many(4, 11, "alto-saxophone", 2);
  const all = [...brass, ...reeds];

  it("counts the cases like the job, with the Jeffreys interval of that count", () => {
    // 1 of 5: scipy.stats.beta.ppf([.025, .975], 1.5, 4.5) = .022513, .628626 (SciPy, a general-purpose library).
    expect(count(all, { instrument: "euphonium", like: brass.slice(0, 5) })).toEqual({
      done: 5,
      harmed: 1,
      among: "like",
      family: null,
      low: 0.0225,
      high: 0.6286,
    });
  });

  it("counts a like case once, and none in which the repair was not done", () => {
    const other = { ...job("30", "cornet"), path: [] };
    expect(count(all, { like: [other, ...brass] })).toMatchObject({ among: "like", done: 6, harmed: 1 });
  });

  it("counts the jobs on the instrument's family where too few are like it", () => {
    expect(count(all, { instrument: "euphonium", like: brass.slice(0, 4) })).toMatchObject({
      done: 6,
      harmed: 1,
      among: "family",
      family: "Piston-valve brass",
    });
  });

  it("counts all jobs where the family has too few, or the instrument is not known", () => {
    for (const instrument of ["tenor-saxophone", "flute", undefined])
      expect(count(all, { instrument })).toMatchObject({ done: 10, harmed: 3, among: "all", family: null });
  });

  it("keeps the narrower count where it holds all jobs there are", () => {
    expect(count(brass.slice(0, 2), { instrument: "trumpet", like: brass.slice(0, 2) })).toMatchObject({
      done: 2,
      among: "like",
    });
    expect(count(reeds, { instrument: "tenor-saxophone" })).toMatchObject({ done: 4, among: "family" });
  });

  it("is null where the repair was never done", () => {
    expect(count([], { instrument: "trumpet" })).toBeNull();
  });
});

describe("repair records", () => {
  it("are the same whatever order the cases come in, but for the order of the harms", () => {
    const { harms: _, ...one } = recordOf(jobs);
    const { harms: __, ...other } = recordOf([...jobs].reverse());
    expect(other).toEqual(one);
  });

  it("are as before once a case is taken back", () => {
    const records = new Map([["resolder-joint", recordOf(jobs.slice(0, 3))]]);
    const [, , , last] = jobs;
    if (!last) throw new Error("there must be a fourth job; got none; mend the test");
    recordRepairs(records, last);
    expect(records.get("resolder-joint")).toEqual(recordOf(jobs));
    recordRepairs(records, last, -1);
    expect(records.get("resolder-joint")).toEqual(recordOf(jobs.slice(0, 3)));
  });

  it("count a step that did harm as harm, told of or not", () => {
    const told = job("5", "trumpet");
    const step = { ...told, path: told.path.map((one) => ({ ...one, result: "harm" as const })) };
    expect(recordOf([told, step])).toMatchObject({ done: 2, harmed: 1, harms: [] });
  });

  it("give the harms of the cases named first, then the latest, and no more than asked for", () => {
    const first = (most: number, ...ids: readonly string[]) =>
      firstHarms(recordOf([...jobs].reverse()), most, new Set(ids)).map((harm) => harm.case);
    expect(first(2)).toEqual(["4", "2"]);
    expect(first(2, "2", "3")).toEqual(["2", "4"]);
    expect(first(1)).toEqual(["4"]);
  });
});
