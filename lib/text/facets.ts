import { z } from "zod";
import type { Case } from "../casebook/caseFile";
import { harmfulRepairs } from "../casebook/harmfulRepairs";
import { parsePartRef } from "../casebook/partRef";
import { quoteStanding } from "../casebook/quoteStanding";
import { rootCauses } from "../casebook/rootCauses";
import { isCheckStep, isRepairStep } from "../casebook/step";
import { familyOf } from "../vocabulary/familyOf";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { checksOfPath } from "./checksOfPath";
import { rememberWords } from "./rememberWords";

/** The ways in which the casebook can be narrowed down. */
export const facetNames = [
  "family",
  "instrument",
  "part",
  "cause",
  "outcome",
  "quote",
  "maker",
  "year",
  "root",
  "kind",
  "fault",
  "harm",
  "check",
  "repair",
] as const;
export type FacetName = (typeof facetNames)[number];

/** Fills a record by the facets' names. */
export const eachFacet = <Value>(make: (name: FacetName) => Value): Readonly<Record<FacetName, Value>> => ({
  family: make("family"),
  instrument: make("instrument"),
  part: make("part"),
  cause: make("cause"),
  outcome: make("outcome"),
  quote: make("quote"),
  maker: make("maker"),
  year: make("year"),
  root: make("root"),
  kind: make("kind"),
  fault: make("fault"),
  harm: make("harm"),
  check: make("check"),
  repair: make("repair"),
});

const chosen = z.string().max(80).optional().catch(undefined);

/** At most one chosen value a facet; anything else in its place counts as no choice. */
export const facetChoiceSchema = z.object(eachFacet(() => chosen));
export type FacetChoice = Readonly<Partial<Record<FacetName, string>>>;

const partOf = rememberWords((written) => parsePartRef(written)?.part ?? null);
const partsOf = (written: readonly (string | undefined)[]) => [
  ...new Set(written.flatMap((text) => (text && partOf(text)) || [])),
];

/**
 * Facet values of one case; a case can have several of most. `cause` is whatever was found, in any role; `check` and `repair`
 * whatever was made and done; `root`,
 * `kind` (the groups of its root causes), `fault` (their parts), `quote` and `harm` (repairs that did harm) are of finished jobs only.
 */
export function facetValues(
  kase: Case,
  vocabulary: Vocabulary,
): Readonly<Record<FacetName, readonly string[]>> {
  const isOpen = kase.status === "open";
  const roots = isOpen ? [] : kase.causes.filter(({ role }) => role === "root");
  return {
    family: [familyOf(vocabulary, kase.instrument)],
    instrument: [kase.instrument],
    part: partsOf(
      kase.path.flatMap((step) => (isCheckStep(step) || isRepairStep(step) ? (step.part ?? []) : [])),
    ),
    cause: [...new Set(kase.causes.map(({ cause }) => cause))],
    outcome: [isOpen ? "open" : (kase.outcome ?? "open")],
    quote: [quoteStanding(kase) ?? []].flat(),
    maker: kase.maker ? [kase.maker] : [],
    year: [kase.received.slice(0, 4)],
    root: isOpen ? [] : rootCauses(kase),
    kind: [...new Set(roots.flatMap(({ cause }) => vocabulary.causes.get(cause)?.group ?? []))],
    fault: partsOf(roots.map(({ part }) => part)),
    harm: isOpen ? [] : harmfulRepairs(kase),
    check: checksOfPath(kase.path, vocabulary),
    repair: [...new Set(kase.path.flatMap((step) => (isRepairStep(step) ? step.repair : [])))],
  };
}
