import { informationGainBits, uncertaintyBits } from "../../diagnosis/informationGain";
import type { Posterior } from "../../diagnosis/posterior";
import { type OpenCheck, rankChecks } from "../../diagnosis/rankChecks";
import { appliesTo } from "../../vocabulary/appliesTo";
import type { Check } from "../../vocabulary/check";
import type { Bench } from "../bench/bench";
import type { Finding } from "../finding";

/** A check still open with its entry in the handbook. */
type RankedCheck = OpenCheck & Readonly<{ check: Check; waits: boolean }>;

/**
 * Ranks the checks still open by what they would tell for their cost; a check that needs another first brings that one's
 * minutes along. Only checks done on the instrument at hand, and none that has been answered.
 *
 * @returns best first, as `rankChecks` has it
 */
export function rankOpenChecks(
  { vocabulary, model }: Pick<Bench, "vocabulary" | "model">,
  belief: Posterior,
  keyed: ReadonlyMap<string, Finding>,
  instrument: string | undefined,
): RankedCheck[] {
  const nowBits = uncertaintyBits(belief);
  const done = new Set([...keyed.values()].map(({ check }) => check));
  const open = [...vocabulary.checks.values()]
    .filter((check) => !done.has(check.id) && appliesTo(vocabulary, check.families, instrument))
    .map((check) => ({
      check,
      id: check.id,
      riskClass: check.risk,
      minutes: check.minutes + minutesToOpen(check, done, vocabulary.checks),
      gainBits: informationGainBits(model, belief, check.id, nowBits),
    }));
  return rankChecks(open);
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
