import fc from "fast-check";
import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { newestFirst } from "@/lib/casebook/newestFirst";
import { putCase } from "@/lib/casebook/putCase";
import type { FacetChoice } from "@/lib/text/facets";
import { narrowCasebook, narrowCases } from "@/lib/text/narrowCases";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { plainCounts, plainMatches } from "./plainFacets";

const way = { caseOf: (kase: Case) => kase, vocabulary: smallVocabulary };
const oneOf = (values: readonly string[]) => fc.constantFrom(...values);
const parts = ["valve 1", "valve 2", "other valve", "casing 3", "bell-stem"];
const anyCase = fc
  .record({
    id: fc.uuid(),
    instrument: oneOf(["cornet", "flute", "euphonium"]),
    received: oneOf(["2023-01-01", "2024-01-01", "2024-02-02"]),
    maker: fc.option(oneOf(["Marrowby", "Corvane", "2024"]), { nil: undefined }),
    outcome: fc.option(oneOf(["fixed", "improved"]), { nil: undefined }),
    status: oneOf(["open", "closed"]),
    causes: fc.array(
      oneOf(["gummed-oil", "casing-dented"]).map((cause) => ({ cause, role: "root" })),
      {
        maxLength: 3,
      },
    ),
    path: fc.array(
      oneOf(parts).map((part) => ({ check: "valve-travel", part, found: "free" })),
      { maxLength: 4 },
    ),
  })
  .map((fields) => makeCase(fields));
const anyChoice: fc.Arbitrary<FacetChoice> = fc.record(
  {
    instrument: oneOf(["cornet", "flute", "tuba"]),
    part: oneOf(["valve", "casing", "nothing"]),
    cause: oneOf(["gummed-oil", "casing-dented"]),
    outcome: oneOf(["fixed", "open"]),
    maker: oneOf(["Marrowby", "2024"]),
    year: oneOf(["2023", "2024", "1999"]),
  },
  { requiredKeys: [] },
);

describe("narrowing and counting in one pass", () => {
  it("keeps and counts what the plain way does, values in the same order", () => {
    fc.assert(
      fc.property(fc.array(anyCase, { maxLength: 20 }), anyChoice, (cases, choice) => {
        const { kept, facets } = narrowCases(cases, choice, way);
        expect(kept).toEqual(cases.filter((kase) => plainMatches(kase, choice)));
        expect(Object.entries(facets).map(([name, counts]) => [name, [...counts]])).toEqual(
          plainCounts(cases, choice),
        );
      }),
    );
  });

  it("does the same for a whole casebook, and sees at once what is put in", () => {
    fc.assert(
      fc.property(fc.array(anyCase, { maxLength: 12 }), anyCase, anyChoice, (cases, late, choice) => {
        const book = { cases: new Map(cases.map((kase) => [kase.id, kase])), problems: [] };
        for (let round = 1; round <= 2; round += 1) {
          const asked = narrowCases(newestFirst(book), choice, way);
          expect(narrowCasebook(book, choice, smallVocabulary)).toEqual(asked);
          putCase(book, late);
        }
      }),
    );
  });

  it("counts a value that no case had before, and more values than it made room for", () => {
    const cases = Array.from({ length: 300 }, (_, at) => makeCase({ id: `m-${at}`, maker: `Maker ${at}` }));
    expect(narrowCases(cases, { maker: "Maker 299" }, way).kept).toEqual([cases[299]]);
    expect(narrowCases(cases, {}, way).facets.maker.size).toBe(300);
  });

  it("does not take a value of one facet for the same word in another", () => {
    const cases = [makeCase({ id: "a", maker: "2024", received: "2023-01-01" })];
    expect(narrowCases(cases, { year: "2024" }, way).kept).toEqual([]);
  });
});
