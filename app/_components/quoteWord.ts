import type { QuoteStanding } from "@/lib/casebook/quoteStanding";

const words: Readonly<Record<QuoteStanding, string>> = {
  under: "Well under it",
  held: "Held",
  over: "Over it",
  "far-over": "Far over it",
};

const isStanding = (standing: string): standing is QuoteStanding => standing in words;

/** How a job's minutes stood against the quote, in words; what is not known stands as it is. */
export function quoteWord(standing: string): string {
  return isStanding(standing) ? words[standing] : standing;
}
