import { alikeMinutes } from "./backUp";
import { compileProblem } from "./compileProblem";
import { openGreedily } from "./openGreedily";
import { PlanGraph } from "./planGraph";
import type { PlanProblem } from "./planProblem";
import { drawPlan, type PlanNode } from "./planTree";

/**
 * Plans by information gain alone, to be compared with: at each belief the check that tells most per minute, until acting costs no
 * more than going on like that.
 *
 * @param options.limit beliefs to work out, 1 or more; where it runs out the plan acts; default 20,000
 * @returns the tree and its expected minutes
 * @throws RangeError as `compileProblem` does
 * Source: Quinlan 1986; stopping after Heckerman, Breese & Rommelse 1995.
 */
export function greedyPlan(
  problem: PlanProblem,
  { limit = 20_000 }: Readonly<{ limit?: number }> = {},
): Readonly<{ root: PlanNode; expectedMinutes: number }> {
  const graph = new PlanGraph(compileProblem(problem));
  const chosen = openGreedily(graph, limit);
  for (const node of graph.openedNodes()) {
    const branch = chosen.get(node);
    if (!branch) continue;
    const goingOn = branch.children.reduce(
      (sum, { probability, node: child }) => sum + probability * child.upperMinutes,
      branch.minutes,
    );
    if (goingOn >= node.actMinutes - alikeMinutes) continue;
    node.upperMinutes = goingOn;
    node.choice = branch;
  }
  return { root: drawPlan(problem, graph), expectedMinutes: graph.root.upperMinutes };
}
