import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { type FacetChoice, facetChoiceSchema, facetValues } from "@/lib/text/facets";
import { narrowCases } from "@/lib/text/narrowCases";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const way = { caseOf: (kase: Case) => kase, vocabulary: smallVocabulary };
const gummed = { cause: "gummed-oil", role: "root" };
const closed = { status: "closed", outcome: "fixed" };
const cases = [
  makeCase({
    id: "a",
    ...closed,
    instrument: "cornet",
    received: "2023-05-01",
    maker: "Marrowby",
    causes: [gummed],
  }),
  makeCase({ id: "b", ...closed, instrument: "cornet", received: "2024-05-01", maker: "Corvane" }),
  makeCase({
    id: "c",
    instrument: "euphonium",
    received: "2024-06-01",
    causes: [gummed, { cause: "gummed-oil", part: "valve 2", role: "contributing" }],
    path: [
      { check: "valve-travel", part: "valve 1", found: "free" },
      { check: "valve-travel", part: "other valve", found: "free" },
      { repair: "clean-and-oil", part: "piston 1", result: "fixed" },
      { swap: ["casing 1", "casing 2"], found: "free" },
    ],
  }),
];
const narrow = (choice: FacetChoice) => narrowCases(cases, choice, way);
const counts = (choice: FacetChoice) =>
  Object.fromEntries(
    Object.entries(narrow(choice).facets).map(([name, map]) => [name, Object.fromEntries(map)]),
  );

describe("the facets of a case", () => {
  it("name each part, cause and year once, whatever its number or role", () => {
    expect(cases.map((kase) => facetValues(kase, smallVocabulary))[2]).toEqual({
      family: ["euphonium"],
      instrument: ["euphonium"],
      part: ["valve", "piston"],
      cause: ["gummed-oil"],
      outcome: ["open"],
      quote: [],
      maker: [],
      year: ["2024"],
      root: [],
      kind: [],
      fault: [],
      harm: [],
      check: ["valve-travel"],
      repair: ["clean-and-oil"],
    });
  });

  it("tell of a finished job what was at the root of it, on which part, what did harm and how the quote held", () => {
    const kase = makeCase({
      id: "d",
      ...closed,
      minutes: 90,
      quoted: { minutes: 60, price: 50 },
      causes: [
        { cause: "gummed-oil", part: "piston 2", role: "root" },
        { cause: "casing-dented", part: "casing 2", role: "contributing" },
      ],
      path: [
        { repair: "clean-and-oil", part: "valve 2", result: "harm" },
        { repair: "ease-casing", result: "fixed" },
      ],
      harms: [{ repair: "ease-casing", what: "Scored.", paidBy: "shop" }],
    });
    expect(facetValues(kase, smallVocabulary)).toMatchObject({
      root: ["gummed-oil"],
      kind: ["dirt"],
      fault: ["piston"],
      harm: ["clean-and-oil", "ease-casing"],
      quote: ["over"],
    });
  });

  it("match where every chosen value is one of its own", () => {
    const matching = (choice: FacetChoice) => narrow(choice).kept.map(({ id }) => id);
    expect(matching({})).toEqual(["a", "b", "c"]);
    expect(matching({ cause: "gummed-oil" })).toEqual(["a", "c"]);
    expect(matching({ cause: "gummed-oil", year: "2024" })).toEqual(["c"]);
    expect(matching({ part: "piston" })).toEqual(["c"]);
    expect(matching({ maker: "nobody" })).toEqual([]);
  });
});

describe("the counts beside the facets", () => {
  it("count every case once a value where nothing is chosen", () => {
    expect(counts({})).toEqual({
      family: { cornet: 2, euphonium: 1 },
      instrument: { cornet: 2, euphonium: 1 },
      part: { valve: 1, piston: 1 },
      cause: { "gummed-oil": 2 },
      outcome: { fixed: 2, open: 1 },
      quote: {},
      maker: { Marrowby: 1, Corvane: 1 },
      year: { 2023: 1, 2024: 2 },
      root: { "gummed-oil": 1 },
      kind: { dirt: 1 },
      fault: {},
      harm: {},
      check: { "valve-travel": 1 },
      repair: { "clean-and-oil": 1 },
    });
  });

  it("say how many cases each further choice would leave; a facet's own choice is set aside for its own counts", () => {
    const { instrument, year, maker } = counts({ instrument: "cornet", year: "2024" });
    expect(instrument).toEqual({ cornet: 1, euphonium: 1 });
    expect(year).toEqual({ 2023: 1, 2024: 1 });
    expect(maker).toEqual({ Corvane: 1 });
  });

  it("are the numbers of cases that the choice then leaves", () => {
    for (const choice of [{}, { year: "2024" }, { cause: "gummed-oil", outcome: "open" }]) {
      for (const [name, values] of Object.entries(narrow(choice).facets)) {
        for (const [value, count] of values) {
          const left = narrow({ ...choice, [name]: value }).kept;
          expect([name, value, count]).toEqual([name, value, left.length]);
        }
      }
    }
  });
});

describe("a choice from outside", () => {
  it("takes at most one short word a facet; anything else is no choice", () => {
    expect(
      facetChoiceSchema.parse({ year: "2024", maker: ["a", "b"], part: "x".repeat(81), other: "y" }),
    ).toEqual({
      year: "2024",
    });
  });
});
