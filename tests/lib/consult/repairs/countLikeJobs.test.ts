import { describe, expect, it } from "vitest";
import { openBench } from "@/lib/consult/bench/openBench";
import { countLikeJobs } from "@/lib/consult/repairs/countLikeJobs";
import { latestHarms, noRecord, type RepairRecord, recordRepairs } from "@/lib/consult/repairs/repairRecords";
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

describe("countLikeJobs", () => {
  it("counts the jobs on the family of the instrument, with the Jeffreys interval of that count", () => {
    // 1 of 3: scipy.stats.beta.ppf([.025, .975], 1.5, 2.5) = .038748, .823264 (SciPy, a general-purpose library).
    const like = countLikeJobs(recordOf(jobs), vocabulary, "euphonium");
    expect(like).toEqual({ done: 3, harmed: 1, among: "Piston-valve brass", low: 0.0387, high: 0.8233 });
  });

  it("counts all jobs where the instrument is not known, or its family has none", () => {
    expect(countLikeJobs(recordOf(jobs), vocabulary, undefined)).toMatchObject({
      done: 4,
      harmed: 2,
      among: null,
    });
    expect(countLikeJobs(recordOf(jobs), vocabulary, "flute")).toMatchObject({
      done: 4,
      harmed: 2,
      among: null,
    });
  });

  it("is null where the repair was never done", () => {
    expect(countLikeJobs(noRecord, vocabulary, "trumpet")).toBeNull();
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

  it("give the latest harm first, and no more than asked for", () => {
    expect(latestHarms(recordOf([...jobs].reverse()), 2).map(({ case: id }) => id)).toEqual(["4", "2"]);
    expect(latestHarms(recordOf(jobs), 1).map(({ case: id }) => id)).toEqual(["4"]);
  });
});
