import { type FacetChoice, type FacetName, facetChoiceSchema, facetNames } from "@/lib/text/facets";

/** What the casebook is asked for, as it stands in the address. */
export type CasebookQuery = Readonly<{ words: string; choice: FacetChoice }>;

export type SearchParams = Readonly<Record<string, string | readonly string[] | undefined>>;

export const longestWords = 400;

const first = (value: SearchParams[string]) => (typeof value === "string" ? value : value?.[0]);

/** Reads the casebook's question from an address; what cannot be read counts as not asked. */
export function readCasebookQuery(params: SearchParams): CasebookQuery {
  const choice = facetChoiceSchema.parse(
    Object.fromEntries(facetNames.map((name) => [name, first(params[name]) || undefined])),
  );
  return { words: (first(params.q) ?? "").slice(0, longestWords), choice };
}

/** The choices of a question, as fields of an address. */
export const chosenFields = ({ choice }: CasebookQuery): readonly (readonly [FacetName, string])[] =>
  facetNames.flatMap((name) => {
    const value = choice[name];
    return value === undefined ? [] : [[name, value] as const];
  });

/** The address of a question to the casebook. */
export function casebookHref(query: CasebookQuery): string {
  const params = new URLSearchParams();
  if (query.words) params.set("q", query.words);
  for (const [name, value] of chosenFields(query)) params.set(name, value);
  return params.size > 0 ? `/casebook?${params}` : "/casebook";
}

/** The question with one facet chosen, or with `undefined` set free. */
export function chooseFacet(query: CasebookQuery, name: FacetName, value: string | undefined): CasebookQuery {
  const { [name]: _, ...others } = query.choice;
  return { ...query, choice: value === undefined ? others : { ...others, [name]: value } };
}
