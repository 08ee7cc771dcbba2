import { alikeMinutes, backUp } from "./backUp";
import { compileProblem } from "./compileProblem";
import { freeTestsBound } from "./freeTestsBound";
import { openGreedily } from "./openGreedily";
import { type BeliefNode, type Branch, PlanGraph } from "./planGraph";
import type { PlanProblem } from "./planProblem";
import { describeActing, drawPlan, type PlanNode, type PlanSize } from "./planTree";

/** A plan with what it is measured by. */
export type Plan = Readonly<{
  root: PlanNode;
  /** What following the plan costs on average, risk included. */
  expectedMinutes: number;
  /** No plan costs less than this. */
  boundMinutes: number;
  /** What it would cost if the state were known: the rest is the price of not knowing. */
  knownMinutes: number;
  /** The bound is met: there is no better plan. */
  exact: boolean;
  /** The best that can be done at once. */
  acting: Readonly<{ repair: string; mendsProbability: number; expectedMinutes: number }>;
  /** The best that is known for checking first; null where no check tells anything, or no work was allowed. */
  checking: Readonly<{ check: string; expectedMinutes: number }> | null;
  /** Beliefs worked out. */
  beliefs: number;
}>;

export type PlanOptions = PlanSize &
  Readonly<{
    /** Beliefs to work out before the plan must stand, 1 or more; default 20,000. */
    limit?: number;
  }>;

/** Share of the work that goes into information gain's own plan, so that the answer is never worse than that. Chosen: the cheapest plans
 * on the casebook's cases among 1/4, 1/2, 3/4, without giving up searching between the bounds. */
const greedyShare = 0.75;

/**
 * Plans which checks to do, and when to stop checking and act, at the least expected cost.
 *
 *   V(b) = min( act(b), min over checks of minutes + sum over outcomes of P(outcome) V(b | outcome) )
 *
 * Heuristic search over beliefs (AO*): each has a lower bound (the best act, or one more check and then knowing all) and an upper
 * one (a plan at hand); the search follows the lowest lower bound and the best plan by turns, to where the two bounds are furthest
 * apart in chance times minutes, until they meet or the work is used up. Outcomes are independent given the state. Where the work
 * runs out the plan acts; it never costs more than information gain's plan by three quarters of the work.
 *
 * @param options.depth, options.nodes how much of the tree is returned, not how far is planned
 * @returns the same for the same input: work is counted, no clock is read
 * @throws RangeError as `compileProblem` does
 * Source: Martelli & Montanari 1978 and Pattipati & Alexandridis 1990 for AO*; Smith & Simmons 2004 for searching between two
 * bounds; Heckerman, Breese & Rommelse 1995 for stopping.
 */
export function planChecks(problem: PlanProblem, { limit = 20_000, ...size }: PlanOptions = {}): Plan {
  const compiled = compileProblem(problem);
  const graph = new PlanGraph(compiled, freeTestsBound(compiled));
  const { root } = graph;
  openGreedily(graph, limit * greedyShare);
  settle(graph);
  let idle = 0;
  for (
    let hopeful = false;
    isOpen(root) && graph.beliefs < limit && idle <= mostIdle + 2;
    hopeful = !hopeful
  ) {
    idle = walk(graph, hopeful) ? 0 : idle + 1;
    if (idle === mostIdle) settle(graph);
  }
  settle(graph);
  const first = root.branches?.reduce<Branch | undefined>(
    (best, branch) => (best && minutesOf(best) <= minutesOf(branch) + alikeMinutes ? best : branch),
    undefined,
  );
  const checking = root.choice ?? first;
  return {
    root: drawPlan(problem, graph, size),
    expectedMinutes: root.upperMinutes,
    boundMinutes: root.lowerMinutes,
    knownMinutes: root.knownMinutes,
    exact: !isOpen(root),
    acting: { ...describeActing(problem, root), expectedMinutes: root.actMinutes },
    checking: checking
      ? { check: problem.checks[checking.check]?.id ?? "", expectedMinutes: minutesOf(checking) }
      : null,
    beliefs: graph.beliefs,
  };
}

/** After so many walks that opened nothing up all bounds are brought up to date; if two more do not either, there is nothing left. */
const mostIdle = 20;

const isOpen = ({ upperMinutes, lowerMinutes }: BeliefNode) => upperMinutes - lowerMinutes > alikeMinutes;

/** What asking this check first costs by the plans at hand. */
const minutesOf = ({ minutes, children }: Branch) =>
  children.reduce((sum, { probability, node }) => sum + probability * node.upperMinutes, minutes);

/** Carries what is known of every belief up to the root, children first. */
function settle(graph: PlanGraph): void {
  for (const node of graph.openedNodes()) backUp(node);
}

/**
 * Goes down from the root to a belief that was never opened up, opens it up, and carries its bounds back.
 *
 * @param hopeful follow the branch that could be best; otherwise the best plan at hand
 * @returns whether anything was opened up
 */
function walk(graph: PlanGraph, hopeful: boolean): boolean {
  const path: BeliefNode[] = [];
  let node: BeliefNode | undefined = graph.root;
  let opened = false;
  while (node && !opened) {
    path.push(node);
    opened = !node.branches;
    graph.open(node);
    const couldBeBest: Branch | undefined = backUp(node);
    node = loosest(hopeful ? couldBeBest : (node.choice ?? couldBeBest));
  }
  for (const passed of path.reverse()) backUp(passed);
  return opened;
}

/** The outcome whose bounds leave most open, chance times minutes. */
function loosest(branch: Branch | undefined): BeliefNode | undefined {
  let [most, found]: [number, BeliefNode | undefined] = [0, undefined];
  for (const { probability, node } of branch?.children ?? []) {
    if (!isOpen(node)) continue;
    // Where acting is still forbidden everything is open: then the likeliest outcome goes first.
    const open = probability * Math.min(node.upperMinutes - node.lowerMinutes, Number.MAX_SAFE_INTEGER);
    if (open > most) [most, found] = [open, node];
  }
  return found;
}
