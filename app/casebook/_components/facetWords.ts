import { labelOf } from "@/app/_components/labelOf";
import { outcomeWord } from "@/app/_components/outcomeWord";
import type { FacetName } from "@/lib/text/facets";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** What each way of narrowing down is called. */
export const facetTitles: Readonly<Record<FacetName, string>> = {
  instrument: "Instrument",
  part: "Part",
  cause: "Cause",
  outcome: "How it ended",
  maker: "Maker",
  year: "Year",
};

/** A value of a facet in words. */
export function facetWords(vocabulary: Vocabulary, name: FacetName, value: string): string {
  switch (name) {
    case "instrument":
      return labelOf(vocabulary.instruments, value);
    case "part":
      return labelOf(vocabulary.parts, value);
    case "cause":
      return labelOf(vocabulary.causes, value);
    case "outcome":
      return outcomeWord(value);
    default:
      return value;
  }
}
