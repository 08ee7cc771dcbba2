import { describe, expect, it } from "vitest";
import { openBench } from "@/lib/consult/bench/openBench";
import { groupByPart } from "@/lib/study/asking/groupByPart";
import { openForStudy } from "@/lib/study/asking/openForStudy";
import { studyBench } from "../studyBench";

const { vocabulary } = studyBench;
const { vocabulary: whole } = openBench({ BENCHLORE_CACHE: "none" }).bench;

describe("checks grouped by the part that they are about", () => {
  it("keeps a group of four and more, and puts what is left over together at the end", () => {
    const horn = openForStudy(vocabulary, "horn", new Set());
    const groups = groupByPart(horn, "horn", vocabulary);
    // All nine checks of the small bench are about its valve.
    expect(groups.map(({ part, checks }) => [part, checks.length])).toEqual([["valve", 9]]);
    const few = groupByPart(horn.slice(0, 3), "horn", vocabulary);
    expect(few.map(({ part, checks }) => [part, checks.length])).toEqual([[null, 3]]);
  });

  it("is nothing for no checks", () => {
    expect(groupByPart([], "horn", vocabulary)).toEqual([]);
  });

  it.each(
    [...whole.instruments.values()]
      .filter(({ outside, parent }) => !outside && parent !== undefined)
      .map(({ id }) => id),
  )("has every check of the %s once, in few groups that each keep the given order", (instrument) => {
    const open = openForStudy(whole, instrument, new Set());
    const groups = groupByPart(open, instrument, whole);
    const all = groups.flatMap(({ checks }) => checks);
    expect(new Set(all)).toEqual(new Set(open));
    expect(all).toHaveLength(open.length);
    for (const { checks } of groups) expect(checks).toEqual(open.filter((one) => checks.includes(one)));
    expect(groups.length).toBeLessThanOrEqual(10);
  });
});
