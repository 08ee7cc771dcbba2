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
export function facetValues(kase: Case): Readonly<Record<FacetName, readonly string[]>> {
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
