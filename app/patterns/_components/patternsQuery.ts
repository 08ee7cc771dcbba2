import { z } from "zod";
import { type CasebookQuery, casebookHref } from "@/app/casebook/_components/casebookQuery";
import type { FacetName } from "@/lib/text/facets";

/** What the Pareto chart counts by, with the facet of the casebook that holds it. */
export const countedBy = {
  cause: "root",
  kind: "kind",
  part: "fault",
  family: "family",
  maker: "maker",
} as const;
export const byNames = ["cause", "kind", "part", "family", "maker"] as const;
export type CountedBy = (typeof byNames)[number];

const chosen = z.string().min(1).max(80).optional().catch(undefined);
const querySchema = z.object({ family: chosen, year: chosen, by: z.enum(byNames).catch("cause") });

/** What the patterns are asked for, as it stands in the address; what cannot be read counts as not asked. */
export type PatternsQuery = Readonly<{
  family?: string | undefined;
  year?: string | undefined;
  by: CountedBy;
}>;

export type SearchParams = Readonly<Record<string, string | readonly string[] | undefined>>;

/** Reads the choices from an address. */
export const readPatternsQuery = (params: SearchParams): PatternsQuery => querySchema.parse(params);

/** The address of the patterns with these choices. */
export function patternsHref({ family, year, by }: PatternsQuery): string {
  const params = new URLSearchParams();
  if (family) params.set("family", family);
  if (year) params.set("year", year);
  if (by !== "cause") params.set("by", by);
  return params.size > 0 ? `/patterns?${params}` : "/patterns";
}

/** The address of the cases behind a figure: those of the family and year chosen that have these values. */
export function casesHref(
  { family, year }: PatternsQuery,
  values: Readonly<Partial<Record<FacetName, string>>>,
): string {
  const own = { ...(family ? { family } : {}), ...(year ? { year } : {}) };
  const query: CasebookQuery = { words: "", choice: { ...own, ...values } };
  return casebookHref(query);
}
