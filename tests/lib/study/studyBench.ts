import { type Case, caseFieldsSchema } from "@/lib/casebook/caseFile";
import { causeModelOf } from "@/lib/consult/bench/causeModelOf";
import { buildTaxonomy } from "@/lib/similarity/taxonomy";
import { causeSchema } from "@/lib/vocabulary/cause";
import { checkSchema } from "@/lib/vocabulary/check";
import { instrumentSchema } from "@/lib/vocabulary/instrument";
import { opinionWeightsSchema } from "@/lib/vocabulary/opinionWeights";
import { partSchema } from "@/lib/vocabulary/part";
import { readingWeightsSchema } from "@/lib/vocabulary/readingWeights";
import { readingWordsSchema } from "@/lib/vocabulary/readingWords";
import { repairSchema } from "@/lib/vocabulary/repair";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

const byId = <Entry extends { id: string }>(entries: readonly Entry[]) =>
  new Map(entries.map((entry) => [entry.id, entry]));
const prose = "A few plain words that are long enough.";
const families = ["brass"];

const instruments = [
  instrumentSchema.parse({ id: "brass", label: "Brass", places: { valve: 3 } }),
  instrumentSchema.parse({ id: "horn", label: "Horn", parent: "brass" }),
  instrumentSchema.parse({ id: "reed", label: "Reed" }),
];
const valvePart = { numbered: true, families };
const parts = [
  partSchema.parse({ ...valvePart, id: "valve", label: "Valve" }),
  partSchema.parse({
    ...valvePart,
    id: "piston",
    label: "Piston",
    belongsTo: "valve",
    swapsInto: "casing",
  }),
  partSchema.parse({ ...valvePart, id: "casing", label: "Casing", belongsTo: "valve" }),
];

const yesOrNo = ["no", "yes"];
const check = (id: string, risk: number, minutes: number, more: object = {}, outcomes = yesOrNo) =>
  checkSchema.parse({
    id,
    label: `Label of ${id}`,
    question: "What is seen?",
    families,
    parts: ["valve"],
    risk,
    minutes,
    how: prose,
    outcomes: outcomes.map((one) => ({ id: one, label: `It is ${one}` })),
    ...more,
  });
const checks = [
  check("dent-seen", 0, 2),
  check("dirt-seen", 1, 1),
  check("cap-off", 2, 3),
  check("bore-look", 2, 4, { needs: ["cap-off"] }),
  check("ask-age", 0, 1),
  check("travel", 1, 2, { reads: "travel", normal: "free", ordered: true }, ["free", "hangs"]),
  check("place", 1, 1, { reads: "place" }, ["top", "bottom"]),
  check("cleaned", 1, 12, {
    triedBy: ["clean"],
    outcomes: [
      { id: "no-change", label: "Nothing", measured: { results: ["no-change"] } },
      { id: "cured", label: "Cured" },
    ],
  }),
  check("swap", 2, 6, {
    reads: "swap",
    outcomes: [
      { id: "guest", label: "Goes with the piston", measured: { suspect: "guest" } },
      { id: "host", label: "Stays with the casing", measured: { suspect: "host" } },
    ],
  }),
  check("reed-look", 0, 1, { families: ["reed"] }),
];

const cause = (id: string, howCommon: string, findings: object, more: object = {}) =>
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
    ...more,
  });
const causes = [
  cause("dirt", "very common", {
    "dent-seen": { yes: "never" },
    "dirt-seen": { yes: "always" },
    "bore-look": { yes: "always" },
  }),
  cause(
    "dent",
    "common",
    { "dent-seen": { yes: "always" }, "dirt-seen": { yes: "never" }, "bore-look": { yes: "never" } },
    { repairs: ["raise"] },
  ),
  cause("pad", "very common", {}, { families: ["reed"] }),
];

const repair = (id: string, checkFirst: readonly object[] = []) =>
  repairSchema.parse({
    id,
    label: id,
    families,
    parts: ["valve"],
    risk: 1,
    minutes: { low: 5, usual: 10, high: 20 },
    how: prose,
    checkFirst,
    goesWrong: ["Goes too far."],
    proof: [{ check: "travel", outcome: "free" }],
  });

const vocabulary: Vocabulary = {
  instruments: byId(instruments),
  parts: byId(parts),
  checks: byId(checks),
  causes: byId(causes),
  repairs: byId([repair("clean"), repair("raise", [{ check: "dent-seen", why: "It must be there." }])]),
  cautions: new Map(),
  words: readingWordsSchema.parse({}),
  sayings: [],
  causeNotes: new Map(),
  weights: opinionWeightsSchema.parse({}),
  readingWeights: readingWeightsSchema.parse({}),
  instrumentTree: buildTaxonomy(instruments),
  partTree: buildTaxonomy(parts),
};

/**
 * Two causes and a few checks, so that every probability can be worked out by hand. On a horn, dirt was there in 6 jobs for
 * every 4 of dents, and 4 in 100 are neither: 0.576, 0.384, 0.04. "Always" is 0.97 and "never" 0.02, each taken back a tenth
 * toward an even 0.5: 0.923 and 0.068.
 */
export const studyBench = { vocabulary, model: causeModelOf(vocabulary) };

/** A step at which a check found something. */
export const found = (id: string, outcome: string, more: object = {}) => ({
  check: id,
  found: outcome,
  ...more,
});

/** A closed horn job with a dent for its root cause, and whatever else a test is about. */
export function studyCase(path: readonly object[], fields: object = {}): Case {
  const parsed = caseFieldsSchema.parse({
    id: "1-1",
    title: "A case",
    status: "closed",
    instrument: "horn",
    received: "2026-01-02",
    complaint: "Hangs.",
    path,
    causes: [{ cause: "dent", role: "root" }],
    ...fields,
  });
  return { ...parsed, story: "", file: "1-1.md" };
}
