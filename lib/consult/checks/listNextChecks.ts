import type { Posterior } from "../../diagnosis/posterior";
import { lowerFirst } from "../../text/lowerFirst";
import type { Check } from "../../vocabulary/check";
import type { NextCheck } from "../answer";
import type { Bench } from "../bench/bench";
import type { Finding } from "../finding";
import { rankOpenChecks } from "./rankOpenChecks";

const most = 6;

/** Lists the checks still open that would tell the most for their cost, see `rankOpenChecks`; at most six. */
export function listNextChecks(
  { vocabulary, model }: Pick<Bench, "vocabulary" | "model">,
  belief: Posterior,
  keyed: ReadonlyMap<string, Finding>,
  instrument: string | undefined,
): NextCheck[] {
  return rankOpenChecks({ vocabulary, model }, belief, keyed, instrument)
    .slice(0, most)
    .map(({ check, minutes, riskClass, gainBits }) => ({
      id: check.id,
      label: check.label,
      question: check.question,
      minutes,
      riskClass,
      gainBits: Number(gainBits.toFixed(4)),
      tells: tellsApart(check, belief, model, vocabulary),
    }));
}

/** The two leading causes that the check's outcomes would part most, in words. */
function tellsApart(
  check: Check,
  belief: Posterior,
  model: Bench["model"],
  vocabulary: Bench["vocabulary"],
): string {
  const leading = model.causes
    .map((id, row) => ({ id, row, p: belief.causes[row] ?? 0 }))
    .sort((a, b) => b.p - a.p)
    .slice(0, 6);
  let best: Readonly<{ score: number; outcome: string; cause: string }> | undefined;
  for (const { id: outcome, label } of check.outcomes) {
    const likelihoods = model.likelihoods(check.id, outcome);
    if (!likelihoods || outcome === check.normal) continue;
    const mean = leading.reduce((sum, { row, p }) => sum + p * (likelihoods[row] ?? 0), 0);
    for (const { id, row, p } of leading) {
      const lift = p * ((likelihoods[row] ?? 0) - mean);
      if (!best || lift > best.score) best = { score: lift, outcome: label, cause: id };
    }
  }
  if (!best || best.score <= 0) return "";
  const cause = vocabulary.causes.get(best.cause)?.label ?? best.cause;
  return `${best.outcome} would speak for: ${lowerFirst(cause)}`;
}
