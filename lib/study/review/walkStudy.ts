import type { Case } from "../../casebook/caseFile";
import type { Bench } from "../../consult/bench/bench";
import type { Posterior } from "../../diagnosis/posterior";
import { checksMade } from "../asking/checksMade";
import { studyEvidence } from "../asking/studyEvidence";
import { relativeEntropyBits } from "./relativeEntropyBits";
import { studyBelief } from "./studyBelief";

/** One check asked for: what it cost by the handbook's minutes, and what it taught. */
export type WalkedCheck = Readonly<{
  check: string;
  minutes: number;
  riskClass: number;
  gainBits: number;
  /** Whether it was made on that job. */
  done: boolean;
}>;

/** A way through the checks of a past job: belief before the first check and after each. */
export type StudyWalk = Readonly<{ checks: readonly WalkedCheck[]; beliefs: readonly Posterior[] }>;

/**
 * Follows belief while checks are asked for one at a time: P(cause | what was found by then). Minutes and risk are the
 * handbook's, for one measure has to serve the apprentice's way and the recorded one.
 *
 * @param asked ids of checks, see `legalAsks`; a check not made on that job moves no belief
 * @returns one belief more than there are checks
 */
export function walkStudy(
  kase: Pick<Case, "instrument" | "path">,
  asked: readonly string[],
  bench: Pick<Bench, "vocabulary" | "model">,
): StudyWalk {
  const { vocabulary } = bench;
  const made = checksMade(kase, vocabulary);
  const evidence = (asks: readonly string[]) => studyEvidence(kase, asks, vocabulary);
  const beliefs = [0, ...asked.map((_, at) => at + 1)].map((count) =>
    studyBelief(kase, evidence(asked.slice(0, count)).findings, bench),
  );
  const checks = asked.map((id, at): WalkedCheck => {
    const [before, after] = [beliefs[at], beliefs[at + 1]];
    return {
      check: id,
      minutes: vocabulary.checks.get(id)?.minutes ?? 0,
      riskClass: vocabulary.checks.get(id)?.risk ?? 0,
      gainBits: before && after ? relativeEntropyBits(allOf(before), allOf(after)) : 0,
      done: made.has(id),
    };
  });
  return { checks, beliefs };
}

const allOf = ({ causes, noneFits }: Posterior) => [...causes, noneFits];
