import { describe, expect, it } from "vitest";
import { newestFirst } from "@/lib/casebook/newestFirst";
import { putCase } from "@/lib/casebook/putCase";
import { countPatterns } from "@/lib/patterns/countPatterns";
import { harmRates } from "@/lib/patterns/harmRates";
import { loneJobs } from "@/lib/patterns/loneJobs";
import { newSince } from "@/lib/patterns/newSince";
import { quoteRecord } from "@/lib/patterns/quoteRecord";
import { thinPlaces } from "@/lib/patterns/thinPlaces";
import { narrowCases } from "@/lib/text/narrowCases";
import { familyOf } from "@/lib/vocabulary/familyOf";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { patternCases } from "./patternCases";

const since = "2025-03-03";
const familyOfCase = ({ instrument }: { instrument: string }) => familyOf(smallVocabulary, instrument);
const [firstFamily] = new Set(patternCases.map(familyOfCase));
const bookOf = () => ({ cases: new Map(patternCases.map((kase) => [kase.id, kase])), problems: [] });
const count = (book: ReturnType<typeof bookOf>, family?: string, year?: string) =>
  countPatterns(book, smallVocabulary, family, year, since);

describe("all patterns of a casebook", () => {
  it.each([
    [undefined, undefined],
    [firstFamily, undefined],
    [undefined, "2025"],
    [firstFamily, "2024"],
  ])("are those of the cases of the family %s and the year %s", (family, year) => {
    const book = bookOf();
    const ofFamily = newestFirst(book).filter(
      (kase) => family === undefined || familyOfCase(kase) === family,
    );
    const cases = ofFamily.filter(({ received }) => year === undefined || received.startsWith(year));
    const way = { caseOf: (kase: (typeof cases)[number]) => kase, vocabulary: smallVocabulary };
    const families = [...new Set(cases.map(familyOfCase))];
    expect(count(book, family, year)).toEqual({
      cases,
      counts: narrowCases(cases, {}, way).facets,
      quotes: quoteRecord(cases),
      quotesByFamily: new Map(
        families.map((one) => [one, quoteRecord(cases.filter((kase) => familyOfCase(kase) === one))]),
      ),
      harms: harmRates(cases),
      thin: thinPlaces(cases, smallVocabulary, family),
      lone: loneJobs(cases, smallVocabulary),
      news: newSince(ofFamily, since),
    });
  });

  it("are counted once, and anew when a case comes", () => {
    const book = bookOf();
    const before = count(book);
    expect(count(book)).toBe(before);
    putCase(book, makeCase({ id: "late", received: "2025-06-01" }));
    expect(count(book).cases.map(({ id }) => id)).toEqual(["late", ...before.cases.map(({ id }) => id)]);
  });
});
