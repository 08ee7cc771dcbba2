import { describe, expect, it } from "vitest";
import { parsePartRef } from "@/lib/casebook/partRef";
import { causeShares } from "@/lib/consult/causes/causeShares";
import { findingKey, keyFindings, parseFindingKey } from "@/lib/consult/keyFindings";
import { caseFindings } from "@/lib/consult/record/caseFindings";
import { smallVocabulary } from "../reading/smallVocabulary";
import { dentCase, smallCase } from "./smallCasebook";

const finding = (check: string, outcome: string, part?: string) => ({
  check,
  outcome,
  part: part === undefined ? undefined : parsePartRef(part),
});
const keyed = (...findings: ReturnType<typeof finding>[]) =>
  Object.fromEntries([...keyFindings(findings, smallVocabulary)].map(([key, { outcome }]) => [key, outcome]));

describe("keyFindings", () => {
  it("counts a sound numbered part as a sibling while another one is amiss", () => {
    expect(keyed(finding("travel", "hangs", "valve 3"), finding("travel", "free", "valve 1"))).toEqual({
      travel: "hangs",
      "travel@others": "free",
    });
  });

  it("does not care which number is amiss", () => {
    const of = (amiss: string, sound: string) =>
      keyed(finding("travel", "hangs", amiss), finding("travel", "free", sound));
    expect(of("valve 1", "valve 2")).toEqual(of("valve 3", "valve 1"));
  });

  it("counts a sound part as the troubled one while nothing is amiss, or when it is amiss itself by another check", () => {
    expect(keyed(finding("travel", "free", "valve 1"))).toEqual({ travel: "free" });
    expect(keyed(finding("travel", "hangs", "valve 2"), finding("casing-look", "sound", "casing 2"))).toEqual(
      { travel: "hangs", "casing-look": "sound" },
    );
  });

  it("keeps the worst on a scale, trouble before soundness elsewhere", () => {
    expect(keyed(finding("travel", "drags", "valve 1"), finding("travel", "hangs", "valve 2"))).toEqual({
      travel: "hangs",
    });
    expect(keyed(finding("deposits", "lime"), finding("deposits", "clean"))).toEqual({ deposits: "lime" });
    expect(keyed(finding("deposits", "clean"), finding("deposits", "lime"))).toEqual({ deposits: "lime" });
  });

  it("takes a key apart as it was put together", () => {
    for (const others of [true, false]) {
      expect(parseFindingKey(findingKey("travel", others))).toEqual({ check: "travel", others });
    }
  });
});

describe("caseFindings", () => {
  const lines = (path: readonly object[]) =>
    caseFindings(smallCase("9-9", { path, causes: [{ cause: "dirt", role: "root" }] }), smallVocabulary).map(
      ({ check, outcome }) => `${check} ${outcome}`,
    );

  it("takes what was found before the cure, not after", () => {
    expect(caseFindings(dentCase, smallVocabulary).map(({ outcome }) => outcome)).toEqual([
      "hangs",
      "free",
      "dented",
    ]);
  });

  it("goes on after a repair that did not fix it", () => {
    expect(
      lines([
        { repair: "press-out", result: "no-change" },
        { check: "deposits", found: "lime" },
      ]),
    ).toEqual(["deposits lime"]);
  });

  it("takes the place in the stroke along", () => {
    expect(lines([{ check: "travel", found: "hangs", where: "half" }])).toEqual([
      "travel hangs",
      "place half",
    ]);
  });

  it("reads swaps together and plugs by their bounds", () => {
    const swap = (a: string, b: string, result: string) => ({ swap: [a, b], found: result });
    expect(lines([swap("piston 2", "casing 2", "sticks"), swap("piston 2", "casing 1", "free")])).toEqual([
      "swap-test casing",
    ]);
    expect(
      lines([
        {
          plugs: { part: "casing 2", passes: [".669 in"], stops: [".671 in"] },
          reference: { part: "casing 1", passes: [".672 in"], stops: [".673 in"] },
        },
      ]),
    ).toEqual(["plugs reduced"]);
  });
});

describe("causeShares", () => {
  it("adds up to 1, the root carrying the most, what a repair brought on nothing", () => {
    const shares = causeShares([
      { cause: "dent", role: "root" },
      { cause: "dirt", role: "contributing" },
      { cause: "wear", role: "brought-on" },
    ]);
    expect(shares.map(({ id }) => id)).toEqual(["dent", "dirt"]);
    expect(shares.reduce((sum, { share }) => sum + share, 0)).toBeCloseTo(1, 12);
    expect(shares[0]?.share).toBeGreaterThan(shares[1]?.share ?? 1);
  });

  it("blames nobody where nothing brought it in", () => {
    expect(causeShares([])).toEqual([]);
    expect(causeShares([{ cause: "wear", role: "brought-on" }])).toEqual([]);
  });
});
