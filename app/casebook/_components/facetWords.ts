import { groupWord } from "@/app/_components/groupWord";
import { labelOf } from "@/app/_components/labelOf";
import { outcomeWord } from "@/app/_components/outcomeWord";
import { quoteWord } from "@/app/_components/quoteWord";
import type { FacetName } from "@/lib/text/facets";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** What each way of narrowing down is called. */
export const facetTitles: Readonly<Record<FacetName, string>> = {
  family: "Family",
  instrument: "Instrument",
  part: "Part",
  cause: "Cause",
  outcome: "How it ended",
  quote: "Against the quote",
  maker: "Maker",
  year: "Year",
  root: "Root cause",
  kind: "Kind of trouble",
  fault: "Part at fault",
  harm: "Harm done by",
  check: "Check made",
  repair: "Repair done",
};

/** The ways that stand beside the cases; the others are chosen by a link, such as one from the patterns. */
export const listedFacets = [
  "family",
  "instrument",
  "part",
  "cause",
  "outcome",
  "quote",
  "maker",
  "year",
] as const satisfies readonly FacetName[];

/** A value of a facet in words. */
export function facetWords(vocabulary: Vocabulary, name: FacetName, value: string): string {
  switch (name) {
    case "family":
    case "instrument":
      return labelOf(vocabulary.instruments, value);
    case "part":
    case "fault":
      return labelOf(vocabulary.parts, value);
    case "cause":
    case "root":
      return labelOf(vocabulary.causes, value);
    case "outcome":
      return outcomeWord(value);
    case "kind":
      return groupWord(value);
    case "quote":
      return quoteWord(value);
    case "harm":
    case "repair":
      return labelOf(vocabulary.repairs, value);
    case "check":
      return labelOf(vocabulary.checks, value);
    default:
      return value;
  }
}
