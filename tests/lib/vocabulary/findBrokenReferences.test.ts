import { describe, expect, it } from "vitest";
import { formatProblem } from "@/lib/document/contentProblem";
import { findBrokenReferences } from "@/lib/vocabulary/findBrokenReferences";
import { leaveOutBroken } from "@/lib/vocabulary/leaveOutBroken";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

function having<Entry>(map: ReadonlyMap<string, Entry>, id: string, change: Partial<Entry>) {
  const entry = map.get(id);
  if (!entry) throw new Error(`the entry must be there; got '${id}'; mend the test`);
  return new Map([...map, [id, { ...entry, ...change }]]);
}
const { instruments, parts, checks, causes, repairs } = smallVocabulary;
const travel = checks.get("valve-travel");
const outcomes = travel?.outcomes ?? [];

const rows: readonly (readonly [string, Partial<Vocabulary>, readonly string[]])[] = [
  [
    "an instrument's count of no part",
    { instruments: having(instruments, "cornet", { places: { valv: 3 } }) },
    ["instruments/cornet places: found 'valv'; write 'valve', or another known part"],
  ],
  [
    "a part's families and the parts that it belongs to and is tried in",
    { parts: having(parts, "piston", { families: ["bras"], belongsTo: "valves", swapsInto: "casin" }) },
    [
      "parts/piston families: found 'bras'; write 'brass', or another known instrument",
      "parts/piston swapsInto: found 'casin'; write 'casing', or another known part",
      "parts/piston belongsTo: found 'valves'; write 'valve', or another known part",
    ],
  ],
  [
    "a check's parts, needs, trials and cautions",
    {
      checks: having(checks, "which-way", {
        parts: ["valv"],
        needs: ["valve-travl"],
        triedBy: ["clean-and-oi"],
        cautions: ["sharp-edge"],
      }),
    },
    [
      "checks/which-way parts: found 'valv'; write 'valve', or another known part",
      "checks/which-way needs: found 'valve-travl'; write 'valve-travel', or another known check",
      "checks/which-way triedBy: found 'clean-and-oi'; write 'clean-and-oil', or another known repair",
      "checks/which-way cautions: found 'sharp-edge'; write 'sharp-edges', or another known caution",
    ],
  ],
  [
    "a check's normal outcome, what a denial means and what an outcome gives way to",
    {
      checks: having(checks, "valve-travel", {
        normal: "fre",
        outcomes: outcomes.map((outcome, at) =>
          at === 0
            ? { ...outcome, denied: "drag", unless: [{ check: "which-wy", outcome: "up" }] }
            : { ...outcome, unless: [{ check: "which-way", outcome: "upp" }] },
        ),
      }),
    },
    [
      "checks/valve-travel normal: found 'fre'; write 'free', or another known outcome of this check",
      "checks/valve-travel outcomes.denied: found 'drag'; write 'drags', or another known outcome of this check",
      "checks/valve-travel outcomes.unless: found 'which-wy'; write 'which-way', or another known check",
      ...Array<string>(2).fill(
        "checks/valve-travel outcomes.unless.which-way: found 'upp'; write 'up', or another known outcome of this check",
      ),
    ],
  ],
  [
    "a cause's findings, those of its siblings, what it is mistaken for and its repairs",
    {
      causes: having(causes, "gummed-oil", {
        findings: { "valve-travl": { free: "never" }, "which-way": { upp: "often" } },
        others: { "valve-travel": { fre: "usually" } },
        mistakenFor: ["casing-dent"],
        repairs: ["no-such-thing-at-all"],
      }),
    },
    [
      "causes/gummed-oil mistakenFor: found 'casing-dent'; write 'casing-dented', or another known cause",
      "causes/gummed-oil repairs: found 'no-such-thing-at-all'; write the id of a known repair",
      "causes/gummed-oil findings: found 'valve-travl'; write 'valve-travel', or another known check",
      "causes/gummed-oil findings.which-way: found 'upp'; write 'up', or another known outcome of this check",
      "causes/gummed-oil others.valve-travel: found 'fre'; write 'free', or another known outcome of this check",
    ],
  ],
  [
    "a repair's first checks and its proof",
    {
      repairs: having(repairs, "ease-casing", {
        checkFirst: [{ check: "which-wy", why: "It tells." }],
        proof: [
          { check: "valve-travl", outcome: "free" },
          { check: "valve-travel", outcome: "fre" },
        ],
      }),
    },
    [
      "repairs/ease-casing checkFirst: found 'which-wy'; write 'which-way', or another known check",
      "repairs/ease-casing proof: found 'valve-travl'; write 'valve-travel', or another known check",
      "repairs/ease-casing proof.valve-travel: found 'fre'; write 'free', or another known outcome of this check",
    ],
  ],
];

describe("a reference that names nothing is found in", () => {
  it.each(rows)("%s", (_, change, lines) => {
    expect(findBrokenReferences({ ...smallVocabulary, ...change }).map(formatProblem)).toEqual(lines);
  });

  it("no entry of a vocabulary that is whole", () => {
    expect(findBrokenReferences(smallVocabulary)).toEqual([]);
  });
});

describe("a vocabulary without what names nothing", () => {
  it.each(rows)("has nothing left of %s", (_, change) => {
    const broken = { ...smallVocabulary, ...change };
    expect(findBrokenReferences(broken)).not.toEqual([]);
    expect(findBrokenReferences(leaveOutBroken(broken))).toEqual([]);
  });

  it("is the same where it was whole", () => {
    expect(leaveOutBroken(smallVocabulary)).toEqual(smallVocabulary);
  });
});
