import { describe, expect, it } from "vitest";
import { findJobs } from "@/lib/study/jobs/findJobs";
import { fitJobs } from "@/lib/study/jobs/fitJobs";
import { found, studyBench, studyCase } from "../studyBench";

const { vocabulary } = studyBench;
const path = [found("dirt-seen", "no"), found("dent-seen", "yes"), found("travel", "hangs")];
const horn = studyCase(path, { id: "1-1", title: "A dent by the door" });
const brass = studyCase(path, {
  id: "1-2",
  instrument: "brass",
  complaint: "Slow all over.",
  causes: [{ cause: "dirt", role: "root" }],
});
const short = studyCase(path.slice(0, 2), { id: "1-3" });
const all = [horn, brass, short];
const find = (asked: Partial<Parameters<typeof findJobs>[1]>) =>
  findJobs(all, { find: "", family: null, cause: null, ...asked }, vocabulary).map(({ id }) => id);

describe("jobs for a lesson", () => {
  it("are those in which enough was checked, in the order of the cases", () => {
    expect(find({})).toEqual(["1-1", "1-2"]);
  });

  it("are found by words of title and complaint, by number, by cause, and by all at once", () => {
    expect(find({ find: "door dent" })).toEqual(["1-1"]);
    expect(find({ find: "slow" })).toEqual(["1-2"]);
    expect(find({ find: "1-2" })).toEqual(["1-2"]);
    expect(find({ cause: "dirt" })).toEqual(["1-2"]);
    expect(find({ cause: "dirt", find: "door" })).toEqual([]);
  });

  it("stand by family, each job once", () => {
    const byFamily = fitJobs(all, vocabulary);
    expect([...byFamily.values()].flat()).toEqual([horn, brass]);
    for (const family of byFamily.keys())
      expect(find({ family })).toEqual(byFamily.get(family)?.map(({ id }) => id));
  });
});
