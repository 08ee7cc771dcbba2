import { informationGainBits } from "../diagnosis/informationGain";
import type { Posterior } from "../diagnosis/posterior";
import { rankChecks } from "../diagnosis/rankChecks";
import { appliesTo } from "../vocabulary/appliesTo";
import type { Check } from "../vocabulary/check";
import type { NextCheck } from "./answer";
import type { Bench } from "./bench";
import type { Finding } from "./finding";

const most = 6;

/**
 * Lists the checks still open that would tell the most for their cost; a check that needs another first brings that one's
 * minutes along. Only checks done on the instrument at hand, and none that has been answered.
 */
export function listNextChecks(
  { vocabulary, model }: Bench,
  belief: Posterior,
  keyed: ReadonlyMap<string, Finding>,
  instrument: string | undefined,
): NextCheck[] {
  const done = new Set([...keyed.values()].map(({ check }) => check));
  const open = [...vocabulary.checks.values()]
    .filter((check) => !done.has(check.id) && appliesTo(vocabulary, check.families, instrument))
    .map((check) => ({
      check,
      id: check.id,
      riskClass: check.risk,
      minutes: check.minutes + minutesToOpen(check, done, vocabulary.checks),
      gainBits: informationGainBits(model, belief, check.id),
    }));
  return rankChecks(open)
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

function minutesToOpen(check: Check, done: ReadonlySet<string>, checks: ReadonlyMap<string, Check>): number {
  const toOpen = new Set<string>();
  const visit = (id: string) => {
    if (done.has(id) || toOpen.has(id)) return;
    toOpen.add(id);
    for (const needed of checks.get(id)?.needs ?? []) visit(needed);
  };
  for (const needed of check.needs) visit(needed);
  return [...toOpen].reduce((sum, id) => sum + (checks.get(id)?.minutes ?? 0), 0);
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
  return `${best.outcome} would speak for: ${cause.charAt(0).toLowerCase()}${cause.slice(1)}`;
}
