import type { PlanCheck, PlanOpener, PlanProblem } from "../../diagnosis/plan/planProblem";
import type { Posterior } from "../../diagnosis/posterior";
import { riskMinutes } from "../../diagnosis/riskMinutes";
import type { Check } from "../../vocabulary/check";
import type { Bench } from "../bench/bench";
import type { Finding } from "../finding";
import { planRepairsOf } from "./planRepairsOf";
import { rankOpenChecks } from "./rankOpenChecks";

/** The state that stands for every cause not listed and for what the handbook does not know; no id looks like it. */
export const otherState = "(other)";

/** Causes that are planned for one by one, and checks that are weighed: what a plan can be made of in some 20 ms. Chosen. */
const most = { causes: 8, checks: 12 } as const;

/**
 * Puts a consultation as a planning problem: the likeliest causes and one state for all others, the checks that tell most for their
 * cost, the repairs of these causes, and looking further where none of them will do; see `planRepairsOf`. Checks that could do lasting harm are left out
 * while a safer one would tell nearly as much.
 *
 * @returns undefined where no cause is possible
 */
export function planProblemOf(
  bench: Pick<Bench, "vocabulary" | "model" | "repairs">,
  belief: Posterior,
  keyed: ReadonlyMap<string, Finding>,
  instrument: string | undefined,
): PlanProblem | undefined {
  const { vocabulary, model } = bench;
  const ranked = model.causes
    .map((id, row) => ({ id, row, probability: belief.causes[row] ?? 0 }))
    .filter(({ probability }) => probability > 0)
    .sort((a, b) => b.probability - a.probability || (a.id < b.id ? -1 : 1));
  const listed = ranked.slice(0, most.causes);
  if (listed.length === 0) return undefined;
  const others = ranked.slice(most.causes);
  const otherwise = others.reduce((sum, { probability }) => sum + probability, belief.noneFits);
  const states = [
    ...listed.map(({ id, probability }) => ({ id, probability })),
    { id: otherState, probability: otherwise },
  ];
  const checks = rankOpenChecks(bench, belief, keyed, instrument)
    .filter(({ waits }) => !waits)
    .slice(0, most.checks)
    .map(({ check }) => check);
  const planned = checks.map((check): PlanCheck => {
    const outcomes = check.outcomes.map(({ id }) => {
      const row = model.likelihoods(check.id, id);
      const unknown = 1 / check.outcomes.length;
      const joint = others.reduce(
        (sum, other) => sum + other.probability * (row?.[other.row] ?? unknown),
        belief.noneFits * unknown,
      );
      const otherLikelihood = otherwise > 0 ? joint / otherwise : unknown;
      return { id, likelihoods: [...listed.map((cause) => row?.[cause.row] ?? unknown), otherLikelihood] };
    });
    return { ...openerOf(check), needs: stillNeeded(check, keyed), outcomes };
  });
  return {
    states,
    checks: planned,
    openers: openersFor(planned, vocabulary.checks, keyed),
    repairs: planRepairsOf(bench, states, instrument),
  };
}

const openerOf = ({ id, minutes, risk }: Check) => ({ id, minutes, riskMinutes: riskMinutes(risk) });

function stillNeeded({ needs }: Check, keyed: ReadonlyMap<string, Finding>): string[] {
  const done = new Set([...keyed.values()].map(({ check }) => check));
  return needs.filter((id) => !done.has(id));
}

/** What the checks need that is none of them, and what that needs. */
function openersFor(
  planned: readonly PlanCheck[],
  checks: ReadonlyMap<string, Check>,
  keyed: ReadonlyMap<string, Finding>,
): PlanOpener[] {
  const known = new Set(planned.map(({ id }) => id));
  const openers: PlanOpener[] = [];
  const visit = (id: string) => {
    const check = checks.get(id);
    if (known.has(id) || !check) return;
    known.add(id);
    const needs = stillNeeded(check, keyed);
    openers.push({ ...openerOf(check), needs });
    for (const further of needs) visit(further);
  };
  for (const { needs = [] } of planned) for (const id of needs) visit(id);
  return openers;
}
