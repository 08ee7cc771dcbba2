import { planChecks } from "../../diagnosis/plan/planChecks";
import type { PlanProblem } from "../../diagnosis/plan/planProblem";
import type { PlanNode } from "../../diagnosis/plan/planTree";
import type { Posterior } from "../../diagnosis/posterior";
import type { PlanAhead, PlanStep } from "../answer";
import type { Bench } from "../bench/bench";
import type { Finding } from "../finding";
import { planProblemOf } from "./planProblemOf";
import { lookFurther } from "./planRepairsOf";

/** Checks one after another, and steps in all, that one can take in at a glance. Chosen. */
const size = { depth: 4, nodes: 40 } as const;
/** Beliefs worked out for one plan. Chosen: about 20 ms; ten times as many make the plans of the casebook's cases 3 minutes cheaper. */
const work = 4000;

/**
 * Plans the checks to come and the repair that each way ends in, by expected cost.
 *
 * @param options.limit beliefs to work out; default 4,000
 * @returns null where the model knows no possible cause
 */
export function planAhead(
  bench: Pick<Bench, "vocabulary" | "model" | "repairs">,
  belief: Posterior,
  keyed: ReadonlyMap<string, Finding>,
  instrument: string | undefined,
  { limit = work }: Readonly<{ limit?: number }> = {},
): PlanAhead | null {
  const problem = planProblemOf(bench, belief, keyed, instrument);
  if (!problem) return null;
  const plan = planChecks(problem, { limit, ...size });
  const { acting, checking } = plan;
  return {
    next: showStep(bench.vocabulary, problem, plan.root),
    expectedMinutes: round(plan.expectedMinutes),
    boundMinutes: round(plan.boundMinutes),
    knownMinutes: round(plan.knownMinutes),
    exact: plan.exact,
    actNow: {
      ...showRepair(bench.vocabulary, acting.repair),
      chance: round(acting.mendsProbability),
      expectedMinutes: round(acting.expectedMinutes),
    },
    checkFirst: checking && {
      check: checking.check,
      label: bench.vocabulary.checks.get(checking.check)?.label ?? checking.check,
      expectedMinutes: round(checking.expectedMinutes),
    },
  };
}

type Vocabulary = Bench["vocabulary"];

function showStep(vocabulary: Vocabulary, problem: PlanProblem, node: PlanNode): PlanStep {
  const reached = {
    likeliest: likeliest(vocabulary, problem, node.belief),
    expectedMinutes: round(node.expectedMinutes),
  };
  if (node.kind === "later") return { kind: "later", ...reached };
  if (node.kind === "act")
    return {
      kind: "act",
      ...showRepair(vocabulary, node.repair),
      chance: round(node.mendsProbability),
      ...reached,
    };
  const check = vocabulary.checks.get(node.check);
  const opens = node.opens.map((id) => ({
    check: id,
    label: vocabulary.checks.get(id)?.label ?? id,
    minutes: vocabulary.checks.get(id)?.minutes ?? 0,
  }));
  // The way to a check may have been paid with an earlier one: then it takes no more time.
  const own = node.minutes > 0 ? (check?.minutes ?? 0) : 0;
  return {
    kind: "check",
    check: node.check,
    label: check?.label ?? node.check,
    opens: opens.map(({ check: id, label }) => ({ check: id, label })),
    minutes: opens.reduce((sum, { minutes }) => sum + minutes, own),
    riskClass: check?.risk ?? 0,
    outcomes: node.outcomes.map(({ outcome, probability, next }) => ({
      outcome,
      label: check?.outcomes.find(({ id }) => id === outcome)?.label ?? outcome,
      probability: round(probability),
      next: showStep(vocabulary, problem, next),
    })),
    ...reached,
  };
}

function showRepair({ repairs }: Vocabulary, id: string) {
  if (id === lookFurther) return { repair: null, label: "Look further", minutes: null, riskClass: null };
  const repair = repairs.get(id);
  return {
    repair: id,
    label: repair?.label ?? id,
    minutes: repair?.minutes.usual ?? null,
    riskClass: repair?.risk ?? null,
  };
}

/** The likeliest listed cause; null where every other cause together is likelier than each of them. */
function likeliest({ causes }: Vocabulary, { states }: PlanProblem, belief: readonly number[]) {
  const probability = Math.max(...belief);
  const cause = causes.get(states[belief.indexOf(probability)]?.id ?? "");
  return {
    cause: cause?.id ?? null,
    label: cause?.label ?? "None of these",
    probability: round(probability),
  };
}

const round = (value: number) => Number(value.toFixed(4));
