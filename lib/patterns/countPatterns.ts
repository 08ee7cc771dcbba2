import type { Case } from "../casebook/caseFile";
import { whileUnchanged } from "../casebook/whileUnchanged";
import { type FacetCounts, narrowCases } from "../text/narrowCases";
import { familyOf } from "../vocabulary/familyOf";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { type HarmRate, harmRates } from "./harmRates";
import { loneJobs } from "./loneJobs";
import { type News, newSince } from "./newSince";
import { type QuoteRecord, quoteRecord } from "./quoteRecord";
import { type ThinPlaces, thinPlaces } from "./thinPlaces";

/** What the cases of a family and a year show together. */
export type Patterns = Readonly<{
  /** The cases themselves, the newest first, and how many of them have each value of each facet. */
  cases: readonly Case[];
  counts: FacetCounts;
  quotes: QuoteRecord;
  quotesByFamily: ReadonlyMap<string, QuoteRecord>;
  harms: readonly HarmRate[];
  thin: ThinPlaces;
  /** Jobs without a neighbour. */
  lone: readonly Case[];
  /** Of the family's cases, whatever their year. */
  news: News;
}>;

/**
 * Counts all patterns of a casebook; what was counted is remembered until a case is put in.
 *
 * @param family which cases, and whose part of the handbook; all where it is undefined
 * @param year in which they were received; any where it is undefined
 * @param since from when on something is new, year-month-day
 */
export const countPatterns = whileUnchanged(
  (all, vocabulary, family: string | undefined, year: string | undefined, since: string): Patterns => {
    const way = { caseOf: (kase: Case) => kase, vocabulary };
    const ofFamily = narrowCases(all, { family }, way).kept;
    const cases = narrowCases(ofFamily, { year }, way).kept;
    return {
      cases,
      counts: narrowCases(cases, {}, way).facets,
      quotes: quoteRecord(cases),
      quotesByFamily: new Map(
        [...byFamily(cases, vocabulary)].map(([id, own]) => [id, quoteRecord(own)] as const),
      ),
      harms: harmRates(cases),
      thin: thinPlaces(cases, vocabulary, family),
      lone: loneJobs(cases, vocabulary),
      news: newSince(ofFamily, since),
    };
  },
);

function byFamily(cases: readonly Case[], vocabulary: Vocabulary): ReadonlyMap<string, readonly Case[]> {
  const families = new Map<string, Case[]>();
  for (const kase of cases) {
    const family = familyOf(vocabulary, kase.instrument);
    const own = families.get(family);
    if (own) own.push(kase);
    else families.set(family, [kase]);
  }
  return families;
}
