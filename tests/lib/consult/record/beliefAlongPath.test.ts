import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { caseFieldsSchema } from "@/lib/casebook/caseFile";
import { causeModelOf } from "@/lib/consult/bench/causeModelOf";
import { beliefAlongPath } from "@/lib/consult/record/beliefAlongPath";
import { buildTaxonomy } from "@/lib/similarity/taxonomy";
import { type Cause, causeSchema } from "@/lib/vocabulary/cause";
import { checkSchema } from "@/lib/vocabulary/check";
import { instrumentSchema } from "@/lib/vocabulary/instrument";
import { opinionWeightsSchema } from "@/lib/vocabulary/opinionWeights";
import { partSchema } from "@/lib/vocabulary/part";
import { readingWeightsSchema } from "@/lib/vocabulary/readingWeights";
import { readingWordsSchema } from "@/lib/vocabulary/readingWords";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

const byId = <Entry extends { id: string }>(entries: readonly Entry[]) =>
  new Map(entries.map((entry) => [entry.id, entry]));
const prose = "A few plain words that are long enough.";

const instruments = [
  instrumentSchema.parse({ id: "brass", label: "Brass", places: { valve: 3 } }),
  instrumentSchema.parse({ id: "horn", label: "Horn", parent: "brass" }),
  instrumentSchema.parse({ id: "reed", label: "Reed" }),
];
const parts = [
  partSchema.parse({ id: "valve", label: "Valve", numbered: true, families: ["brass"] }),
  partSchema.parse({
    id: "piston",
    label: "Piston",
    numbered: true,
    belongsTo: "valve",
    swapsInto: "casing",
    families: ["brass"],
  }),
  partSchema.parse({
    id: "casing",
    label: "Casing",
    numbered: true,
    belongsTo: "valve",
    families: ["brass"],
  }),
];
const check = (id: string, outcomes: readonly object[], more = {}) =>
  checkSchema.parse({
    id,
    label: `Check ${id}`,
    question: "What is seen?",
    families: ["brass"],
    parts: ["valve"],
    risk: 1,
    minutes: 1,
    how: prose,
    outcomes,
    ...more,
  });
const seen = [
  { id: "no", label: "no" },
  { id: "yes", label: "yes" },
];
const checks = [
  check("dirt-seen", seen),
  check("dent-seen", seen),
  check(
    "swap-test",
    [
      { id: "guest", label: "the piston", measured: { suspect: "guest" } },
      { id: "host", label: "the casing", measured: { suspect: "host" } },
    ],
    { reads: "swap" },
  ),
];
const cause = (id: string, families: string[], howCommon: string, findings: object): Cause =>
  causeSchema.parse({
    id,
    label: id,
    group: id,
    families,
    parts: ["valve"],
    howCommon,
    comesAbout: prose,
    prove: prose,
    findings,
  });
const causes = [
  cause("dirt", ["brass"], "very common", { "dirt-seen": { yes: "always" }, "dent-seen": { yes: "never" } }),
  cause("dent", ["brass"], "common", {
    "dirt-seen": { yes: "sometimes" },
    "dent-seen": { yes: "always" },
    "swap-test": { host: "always" },
  }),
  cause("bend", ["brass"], "rare", { "swap-test": { guest: "always" } }),
  cause("wear", ["brass"], "rare", {}),
  cause("pad", ["reed"], "very common", {}),
];
const vocabulary: Vocabulary = {
  instruments: byId(instruments),
  parts: byId(parts),
  checks: byId(checks),
  causes: byId(causes),
  repairs: new Map(),
  cautions: new Map(),
  words: readingWordsSchema.parse({}),
  sayings: [],
  causeNotes: new Map(),
  weights: opinionWeightsSchema.parse({}),
  readingWeights: readingWeightsSchema.parse({}),
  instrumentTree: buildTaxonomy(instruments),
  partTree: buildTaxonomy(parts),
};
const bench = { vocabulary, model: causeModelOf(vocabulary) };

const dirt = (found: string) => ({ check: "dirt-seen", part: "valve 2", found });
const dent = (found: string) => ({ check: "dent-seen", part: "valve 2", found });
function walk(path: readonly object[], root: string | null = "dent") {
  const fields = caseFieldsSchema.parse({
    id: "1-1",
    title: "A case",
    status: "closed",
    instrument: "horn",
    received: "2026-01-02",
    complaint: "Hangs.",
    path,
    causes: root === null ? [] : [{ cause: root, role: "root" }],
  });
  const kase: Case = { ...fields, story: "", file: "1-1.md" };
  return beliefAlongPath(kase, bench);
}

describe("belief along a path", () => {
  it("names the root first, then the two others most believed in at any time", () => {
    expect(walk([dent("yes")]).causes).toEqual(["dent", "dirt", "bend"]);
  });

  it("has one row a step, each a probability for every cause shown, and one before the first step", () => {
    const { before, after, causes: shown } = walk([dirt("no"), dent("yes")]);
    expect(after).toHaveLength(2);
    for (const row of [before, ...after]) {
      expect(row).toHaveLength(shown.length);
      expect(row.every((p) => p >= 0 && p <= 1)).toBe(true);
      expect(row.reduce((sum, p) => sum + p, 0)).toBeLessThanOrEqual(1);
    }
  });

  it("gives causes of other families no belief", () => {
    expect(walk([dent("yes")]).causes).not.toContain("pad");
  });

  it("raises the root when a step speaks for it and leaves it alone when a step says nothing", () => {
    const { before, after } = walk([{ check: "unheard-of", found: "yes" }, dent("yes")]);
    expect(after[0]).toEqual(before);
    expect(after[1]?.[0]).toBeGreaterThan(before[0] ?? 1);
  });

  it("turns at the step after which the root leads for good", () => {
    expect(walk([dirt("no"), dent("yes")]).turn).not.toBeNull();
    const misled = walk([dirt("yes"), dent("yes"), { check: "unheard-of", found: "yes" }]);
    expect(misled.after[0]?.[0]).toBeLessThan(misled.after[0]?.[1] ?? 0);
    expect(misled.turn).toBe(1);
    expect(misled.turn).toBe(
      misled.after.findIndex(([root = 0, ...others]) => others.every((p) => p < root)),
    );
  });

  it("does not turn where the root led from the start, never led, or is not known", () => {
    expect(walk([dirt("yes")], "dirt").turn).toBeNull();
    expect(walk([dirt("yes")], "dent").turn).toBeNull();
    expect(walk([dent("yes")], null).turn).toBeNull();
    expect(walk([dent("yes")], "unheard-of").turn).toBeNull();
  });

  it("reads swap tests together: one alone says nothing, the one that parts piston and casing does", () => {
    const swap = (a: string, b: string, found: string) => ({ swap: [a, b], found });
    const { after, before } = walk([
      swap("piston 2", "casing 1", "free"),
      swap("piston 1", "casing 2", "sticks"),
      swap("piston 3", "casing 2", "sticks"),
    ]);
    expect(after[0]).toEqual(before);
    expect(after[2]?.[0]).toBeGreaterThan(before[0] ?? 1);
  });

  it("does not move any more once a repair has fixed it", () => {
    const { after } = walk([dent("yes"), { repair: "press-out", result: "fixed" }, dent("no")]);
    expect(after[2]).toEqual(after[0]);
  });

  it("shows the three most believed in for a case without a root, and only the start for one without steps", () => {
    expect(walk([dirt("yes")], null).causes[0]).toBe("dirt");
    expect(walk([]).after).toEqual([]);
  });
});
