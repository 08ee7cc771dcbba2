import { describe, expect, it } from "vitest";
import { loneJobs } from "@/lib/patterns/loneJobs";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const drags = { check: "valve-travel", part: "valve 1", found: "drags" };
const job = (id: string, path: object[], more: object = {}) =>
  makeCase({ id, status: "closed", outcome: "fixed", instrument: "cornet", path, ...more });
const alone = (...cases: Parameters<typeof loneJobs>[0]) =>
  loneJobs(cases, smallVocabulary).map(({ id }) => id);

describe("jobs without a neighbour", () => {
  const both = job("both", [{ ...drags, where: "top" }]);

  it("share less than two findings out of the ordinary with every other job of the family", () => {
    const other = job("other", [{ ...drags, where: "bottom" }]);
    expect(alone(both, other)).toEqual(["both", "other"]);
    expect(alone(both, other, job("same", [{ ...drags, where: "top" }]))).toEqual(["other"]);
  });

  it("are not found among those of another family", () => {
    expect(alone(both, job("elsewhere", [{ ...drags, where: "top" }], { instrument: "flute" }))).toEqual([
      "both",
      "elsewhere",
    ]);
  });

  it("have only one such finding where no other job had that one", () => {
    const one = job("one", [drags]);
    expect(alone(one)).toEqual(["one"]);
    expect(alone(one, both)).toEqual(["both"]);
  });

  it("are finished, and showed something", () => {
    expect(alone(job("sound", [{ ...drags, found: "free" }]))).toEqual([]);
    expect(alone(job("open", [drags], { status: "open", outcome: undefined }))).toEqual([]);
  });
});
