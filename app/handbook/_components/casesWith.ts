import type { Case } from "@/lib/casebook/caseFile";
import type { Casebook } from "@/lib/casebook/loadCasebook";
import { newestFirst } from "@/lib/casebook/newestFirst";
import type { FacetChoice } from "@/lib/text/facets";
import { narrowCases } from "@/lib/text/narrowCases";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** The cases that have a cause, a check or a repair, the newest first: the very ones that the casebook shows when narrowed to it. */
export const casesWith = (casebook: Casebook, choice: FacetChoice, vocabulary: Vocabulary): readonly Case[] =>
  narrowCases(newestFirst(casebook), choice, { caseOf: (kase) => kase, vocabulary }).kept;
