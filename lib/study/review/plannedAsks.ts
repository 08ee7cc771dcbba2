import type { Case } from "../../casebook/caseFile";
import type { Bench } from "../../consult/bench/bench";
import { rankOpenChecks } from "../../consult/checks/rankOpenChecks";
import { keyFindings } from "../../consult/keyFindings";
import { checksMade } from "../asking/checksMade";
import { legalAsks } from "../asking/legalAsks";
import { studyEvidence } from "../asking/studyEvidence";
import { leadingCause } from "./leadingCause";
import { studyBelief } from "./studyBelief";
import { enoughProbability } from "./whenEnough";

/** No plan walks on for longer. Chosen. */
const mostAsks = 15;

/**
 * The way that the bench itself would have gone: each time the check that it ranks first among those that were made on
 * that job, with what has to be opened before it, until one cause stands over 80 in 100 or nothing telling is left.
 *
 * @param bench must not have learned the case itself (see `withoutCase`)
 */
export function plannedAsks(
  kase: Pick<Case, "instrument" | "path">,
  { vocabulary, model }: Pick<Bench, "vocabulary" | "model">,
): string[] {
  const made = checksMade(kase, vocabulary);
  let asks: string[] = [];
  while (asks.length < mostAsks) {
    const { findings, settled } = studyEvidence(kase, asks, vocabulary);
    const keyed = keyFindings(findings, vocabulary);
    const belief = studyBelief(kase, findings, { vocabulary, model });
    if ((leadingCause(belief, model.causes)?.probability ?? 0) > enoughProbability) break;
    const next = rankOpenChecks({ vocabulary, model }, belief, keyed, kase.instrument).find(
      ({ id }) => !settled.has(id) && made.has(id),
    );
    if (!next) break;
    // What opens the way may answer the check along with itself.
    asks = legalAsks(kase, [...asks, ...inOrder(next.id, settled, vocabulary.checks)], vocabulary);
  }
  return asks;
}

/** A check with what has to come before it, openers first. */
function inOrder(
  id: string,
  settled: ReadonlySet<string>,
  checks: Bench["vocabulary"]["checks"],
  above: readonly string[] = [],
): string[] {
  if (settled.has(id) || above.includes(id)) return [];
  const needs = (checks.get(id)?.needs ?? []).flatMap((needed) =>
    inOrder(needed, settled, checks, [...above, id]),
  );
  return [...new Set([...needs, id])];
}
