import type { Case } from "../../casebook/caseFile";
import { appliesTo } from "../../vocabulary/appliesTo";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { studyEvidence } from "./studyEvidence";

/** More are not taken from an address; no job calls for as many. */
const mostAsks = 60;

/**
 * Takes the checks asked for, one after another, as far as the bench would let one do them: what the vocabulary does not
 * know, what is not done on this instrument, what was settled already and what is not open yet is passed over.
 *
 * @returns the asks that count, in their order
 */
export function legalAsks(
  kase: Pick<Case, "instrument" | "path">,
  asked: readonly string[],
  vocabulary: Vocabulary,
): string[] {
  const legal: string[] = [];
  let settled: ReadonlySet<string> = new Set();
  for (const id of asked) {
    const check = vocabulary.checks.get(id);
    if (!check || settled.has(id) || legal.length === mostAsks) continue;
    if (!appliesTo(vocabulary, check.families, kase.instrument)) continue;
    if (!check.needs.every((needed) => settled.has(needed))) continue;
    legal.push(id);
    settled = studyEvidence(kase, legal, vocabulary).settled;
  }
  return legal;
}
