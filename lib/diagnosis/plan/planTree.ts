import { alikeMinutes } from "./backUp";
import type { BeliefNode, PlanGraph } from "./planGraph";
import type { PlanProblem } from "./planProblem";

/** Probabilities of the states when a node is reached, in the states' order, and the minutes to be expected from there on. */
type Reached = Readonly<{ belief: readonly number[]; expectedMinutes: number }>;

/** Do this repair. */
export type ActNode = Reached & Readonly<{ kind: "act"; repair: string; mendsProbability: number }>;

/** Do this check; what has to be opened for it is done with it. */
export type CheckNode = Reached &
  Readonly<{
    kind: "check";
    check: string;
    /** Openings done for it, in no order. */
    opens: readonly string[];
    /** Of the check and its openings, risk included. */
    minutes: number;
    /** In the check's order; impossible outcomes are left out; probabilities add up to 1. */
    outcomes: readonly Readonly<{ outcome: string; probability: number; next: PlanNode }>[];
  }>;

/** The tree is cut here: plan again when you get there. */
export type LaterNode = Reached & Readonly<{ kind: "later" }>;

export type PlanNode = ActNode | CheckNode | LaterNode;

/** How much of a plan is drawn: checks one after another, and nodes in all. */
export type PlanSize = Readonly<{ depth?: number; nodes?: number }>;

type Draft = {
  readonly node: BeliefNode;
  readonly reach: number;
  readonly depth: number;
  children?: Draft[];
};

/**
 * Draws the plan that the graph has settled on as a tree, the likeliest branches first where it must be cut.
 *
 * @param size.depth most checks one after another; default no limit
 * @param size.nodes most nodes in all, 1 or more; default 1,000
 */
export function drawPlan(
  problem: PlanProblem,
  { root, problem: { openings } }: PlanGraph,
  { depth = Number.POSITIVE_INFINITY, nodes = 1000 }: PlanSize = {},
): PlanNode {
  const top: Draft = { node: root, reach: 1, depth: 0 };
  const frontier = [top];
  let drawn = 1;
  while (frontier.length > 0) {
    let likeliest = 0;
    for (const [at, { reach }] of frontier.entries())
      if (reach > (frontier[likeliest]?.reach ?? 0)) likeliest = at;
    const [draft] = frontier.splice(likeliest, 1);
    const branch = draft?.node.choice;
    if (!draft || !branch || draft.depth >= depth || drawn + branch.children.length > nodes) continue;
    draft.children = branch.children.map(({ probability, node }) => ({
      node,
      reach: draft.reach * probability,
      depth: draft.depth + 1,
    }));
    drawn += draft.children.length;
    frontier.push(...draft.children);
  }
  const draw = ({ node, children }: Draft): PlanNode => {
    const reached = { belief: [...node.belief], expectedMinutes: node.upperMinutes };
    const { choice } = node;
    if (!choice) {
      // A belief that was never opened up and might be worth a check is not a place to act without planning again.
      if (!node.branches && node.lowerMinutes < node.actMinutes - alikeMinutes)
        return { kind: "later", ...reached };
      return { kind: "act", ...describeActing(problem, node), ...reached };
    }
    const check = problem.checks[choice.check];
    if (!children || !check) return { kind: "later", ...reached };
    const paid = choice.children[0]?.node.opened ?? 0;
    const opens = openings
      .filter(({ id }, bit) => paid & ~node.opened & (1 << bit) && id !== check.id)
      .map(({ id }) => id);
    const outcomes = choice.children.map(({ outcome, probability }, at) => {
      const child = children[at];
      if (!child) throw new RangeError("every outcome must have its node; got none; draw all of them");
      return { outcome: check.outcomes[outcome]?.id ?? "", probability, next: draw(child) };
    });
    return { kind: "check", check: check.id, opens, minutes: choice.minutes, outcomes, ...reached };
  };
  return draw(top);
}

/** The best repair at a belief and its chance of mending. */
export function describeActing(
  { repairs }: PlanProblem,
  { repair: at, belief }: BeliefNode,
): Readonly<{ repair: string; mendsProbability: number }> {
  const repair = repairs[at];
  const mendsProbability = belief.reduce((sum, p, state) => sum + p * (repair?.mends[state] ?? 0), 0);
  return { repair: repair?.id ?? "", mendsProbability: Math.min(1, mendsProbability) };
}
