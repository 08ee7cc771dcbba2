import { z } from "zod";
import type { Case } from "../casebook/caseFile";
import { parsePartRef } from "../casebook/partRef";
import { isCheckStep, isRepairStep } from "../casebook/step";

/** The ways in which the casebook can be narrowed down. */
export const facetNames = ["instrument", "part", "cause", "outcome", "maker", "year"] as const;
export type FacetName = (typeof facetNames)[number];

const chosen = z.string().max(80).optional().catch(undefined);

/** At most one chosen value a facet; anything else in its place counts as no choice. */
export const facetChoiceSchema = z.object({
  instrument: chosen,
  part: chosen,
  cause: chosen,
  outcome: chosen,
  maker: chosen,
  year: chosen,
});
export type FacetChoice = Readonly<Partial<Record<FacetName, string>>>;

/** Facet values of one case; a case can have several parts and causes. */
export function facetValues(kase: Case): Record<FacetName, readonly string[]> {
  const parts = kase.path.flatMap((step) =>
    isCheckStep(step) || isRepairStep(step) ? (step.part ?? []) : [],
  );
  return {
    instrument: [kase.instrument],
    part: [...new Set(parts.flatMap((text) => parsePartRef(text)?.part ?? []))],
    cause: [...new Set(kase.causes.map(({ cause }) => cause))],
    outcome: [kase.status === "open" ? "open" : (kase.outcome ?? "open")],
    maker: kase.maker ? [kase.maker] : [],
    year: [kase.received.slice(0, 4)],
  };
}

/** Tells whether a case has every chosen value. */
export function matchesFacets(kase: Case, choice: FacetChoice, except?: FacetName): boolean {
  const values = facetValues(kase);
  return facetNames.every(
    (name) => name === except || choice[name] === undefined || values[name].includes(choice[name]),
  );
}

/** How many cases each further choice would leave; a facet's own choice is set aside while it is counted. */
export function countFacets(
  cases: readonly Case[],
  choice: FacetChoice,
): Record<FacetName, ReadonlyMap<string, number>> {
  const counts = {
    instrument: new Map<string, number>(),
    part: new Map<string, number>(),
    cause: new Map<string, number>(),
    outcome: new Map<string, number>(),
    maker: new Map<string, number>(),
    year: new Map<string, number>(),
  };
  for (const kase of cases) {
    const values = facetValues(kase);
    for (const name of facetNames) {
      if (!matchesFacets(kase, choice, name)) continue;
      for (const value of values[name]) counts[name].set(value, (counts[name].get(value) ?? 0) + 1);
    }
  }
  return counts;
}
