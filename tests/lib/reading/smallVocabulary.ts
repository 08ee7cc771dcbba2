import { buildReader } from "@/lib/reading/reader";
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

/*
 * A vocabulary that fits on two screens, so that what a test of the reading expects can be seen from it alone.
 */
const prose = "A few plain words that are long enough.";
const byId = <Entry extends { id: string }>(entries: readonly Entry[]) =>
  new Map(entries.map((entry) => [entry.id, entry]));

const instruments = [
  { id: "brass", label: "Brass", places: { valve: 3 } },
  { id: "trumpet", label: "Trumpet", parent: "brass", synonyms: ["tpt", "student trumpet"] },
  { id: "reed", label: "Reed" },
  { id: "clarinet", label: "Clarinet", parent: "reed" },
  { id: "violin", label: "Violin", outside: true },
].map((entry) => instrumentSchema.parse(entry));

const numbered = { numbered: true, families: ["brass"] };
const parts = [
  { id: "valve", label: "Valve", ...numbered },
  { id: "piston", label: "Piston", belongsTo: "valve", swapsInto: "casing", ...numbered },
  { id: "casing", label: "Casing", belongsTo: "valve", ...numbered },
  { id: "spring", label: "Spring", belongsTo: "valve", ...numbered },
  { id: "bell", label: "Bell", families: ["brass"] },
  { id: "pad", label: "Pad", families: ["reed"] },
].map((entry) => partSchema.parse(entry));

const check = (id: string, label: string, part: string, outcomes: readonly object[], more: object = {}) =>
  checkSchema.parse({
    id,
    label,
    question: "What is seen?",
    families: ["brass"],
    parts: [part],
    risk: 1,
    minutes: 2,
    how: prose,
    outcomes,
    ...more,
  });
const checks = [
  check(
    "travel",
    "Valve travel",
    "valve",
    [
      { id: "free", label: "Free", synonyms: ["runs free", "run free", "moves freely"], denied: "drags" },
      { id: "drags", label: "Drags", synonyms: ["drags", "feels tight"] },
      { id: "hangs", label: "Hangs", synonyms: ["hangs", "sticks", "sticking", "wont come up"] },
    ],
    { ordered: true, reads: "travel", normal: "free" },
  ),
  check(
    "place",
    "Where in the stroke",
    "valve",
    [
      { id: "third", label: "A third down", synonyms: ["third of the way down", "1/3 down"] },
      { id: "half", label: "Halfway down", synonyms: ["half way down", "1/2 down"] },
      { id: "last-bit", label: "Last bit", synonyms: ["last 1/4 in"] },
    ],
    { ordered: true, reads: "place" },
  ),
  check(
    "casing-look",
    "Look at the casing",
    "casing",
    [
      { id: "sound", label: "Casing unmarked", synonyms: ["casing unmarked"] },
      { id: "dented", label: "Casing dented", synonyms: ["dents", "dent in casing", "casing dented"] },
    ],
    { normal: "sound", risk: 0, minutes: 1 },
  ),
  check(
    "deposits",
    "Look for deposits",
    "valve",
    [
      { id: "clean", label: "Piston clean", synonyms: ["spotless"] },
      { id: "lime", label: "Lime on the piston", synonyms: ["lime", "white crust"] },
    ],
    { normal: "clean", parts: ["piston"] },
  ),
  check(
    "bell-look",
    "Sight along the bell",
    "bell",
    [
      { id: "straight", label: "Bell straight", synonyms: ["bell straight", "no light shows under rim"] },
      { id: "bent", label: "Bell bent", synonyms: ["bell bent", "bend", "bends", "light shows under rim"] },
    ],
    { normal: "straight", risk: 0, minutes: 1 },
  ),
  check(
    "spring-look",
    "Look at the spring",
    "spring",
    [
      { id: "right", label: "Spring like its neighbours" },
      { id: "short", label: "Spring cut short", synonyms: ["spring weak"] },
    ],
    { normal: "right", synonyms: ["spring"] },
  ),
  check(
    "knock",
    "Ask about knocks",
    "casing",
    [
      { id: "none", label: "Nothing known", synonyms: ["no accident"] },
      { id: "dropped", label: "It was dropped", synonyms: ["dropped", "knocked over"] },
    ],
    { normal: "none", risk: 0, parts: ["casing", "bell"] },
  ),
  check(
    "swap-test",
    "Swap pistons",
    "valve",
    [
      { id: "piston", label: "Goes with the piston", measured: { suspect: "guest" } },
      { id: "casing", label: "Stays with the casing", measured: { suspect: "host" } },
    ],
    { reads: "swap", parts: ["casing", "piston"] },
  ),
  check(
    "plugs",
    "Plug gauge",
    "casing",
    [
      { id: "true", label: "True", measured: { underThou: 0.5 } },
      { id: "reduced", label: "Tight place", measured: { overThou: 0.5 } },
    ],
    { reads: "reduction", normal: "true" },
  ),
  check(
    "pad-look",
    "Look at the pads",
    "pad",
    [
      { id: "whole", label: "Pads whole" },
      { id: "torn", label: "Pad torn", synonyms: ["pad torn", "torn skin"] },
    ],
    { normal: "whole", families: ["reed"] },
  ),
];

const cause = (id: string, families: string[], howCommon: string, findings: object, more: object = {}) =>
  causeSchema.parse({
    id,
    label: `Cause ${id}`,
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
  cause(
    "dirt",
    ["brass"],
    "very common",
    { deposits: { lime: "usually" }, travel: { drags: "usually" } },
    { others: { travel: { drags: "often" } } },
  ),
  cause(
    "dent",
    ["brass"],
    "common",
    {
      "casing-look": { dented: "usually" },
      travel: { hangs: "usually" },
      knock: { dropped: "usually" },
      "swap-test": { casing: "always" },
      plugs: { reduced: "always" },
    },
    { comesAbout: "The player stacks his stands against it until a wall gives way.", repairs: ["press-out"] },
  ),
  cause("bent-piston", ["brass"], "rare", {
    "swap-test": { piston: "always" },
    travel: { hangs: "usually" },
  }),
  cause("weak-spring", ["brass"], "uncommon", { "spring-look": { short: "usually" } }),
  cause("torn-pad", ["reed"], "common", { "pad-look": { torn: "always" } }),
];

const repairs = [
  repairSchema.parse({
    id: "press-out",
    label: "Press the wall out",
    families: ["brass"],
    parts: ["casing"],
    risk: 3,
    minutes: { low: 10, usual: 20, high: 60 },
    how: prose,
    checkFirst: [{ check: "plugs", why: "It shows how far it is in." }],
    goesWrong: ["The wall goes too far."],
    proof: [{ check: "travel", outcome: "free" }],
  }),
];

export const smallVocabulary: Vocabulary = {
  instruments: byId(instruments),
  parts: byId(parts),
  checks: byId(checks),
  causes: byId(causes),
  repairs: byId(repairs),
  cautions: new Map(),
  sayings: [],
  causeNotes: new Map(),
  weights: opinionWeightsSchema.parse({}),
  readingWeights: readingWeightsSchema.parse({}),
  words: readingWordsSchema.parse({
    deniesWhatFollows: [
      "no",
      "not",
      "none",
      "without",
      "never",
      "no sign of",
      "does not",
      "doesn't",
      "rule out",
    ],
    deniesWhatPrecedes: ["not there", "ruled out", "not it"],
    doubts: ["maybe", "might be", "not sure"],
    longAgo: ["years ago"],
    beliefs: ["thinks", "is sure", "blames"],
    endsScope: ["but", "although"],
    others: ["others", "other two", "other valves"],
    all: ["all three"],
    fillers: ["the", "a", "it", "is", "was", "of", "with", "and", "or", "in the"],
    joinsParts: ["and", "or", "plus"],
    joinsDenied: ["or", "nor"],
    sound: ["fine", "ok", "good"],
    affirms: ["yes", "yep"],
    units: ["thou", "mm"],
    numbers: { first: 1, second: 2, third: 3 },
    shortForms: { "w/o": "without", "w/": "with", vlv: "valve", halfway: "half way" },
    swapJoins: ["in", "into"],
    swapResults: {
      free: ["free", "fine", "runs free"],
      drags: ["drags", "tight"],
      sticks: ["sticks", "hangs"],
    },
  }),
  instrumentTree: buildTaxonomy(instruments),
  partTree: buildTaxonomy(parts),
};

export const smallReader = buildReader(smallVocabulary);
