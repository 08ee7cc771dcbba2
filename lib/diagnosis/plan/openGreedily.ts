import { entropyBits } from "../entropy";
import { alikeMinutes } from "./backUp";
import type { BeliefNode, Branch, PlanGraph } from "./planGraph";

/** A belief and the chance of coming to it. */
type Reach = Readonly<{ node: BeliefNode; reach: number }>;

/**
 * Opens up the beliefs that are met by always asking the check with the most information per minute, the likeliest first.
 *
 * @param limit no belief is opened up once this many have been worked out
 * @returns the check chosen at each belief that was opened up; undefined where no check tells anything
 * Source: information gain, Quinlan 1986.
 */
export function openGreedily(graph: PlanGraph, limit: number): Map<BeliefNode, Branch | undefined> {
  const chosen = new Map<BeliefNode, Branch | undefined>();
  let frontier: readonly Reach[] = [{ node: graph.root, reach: 1 }];
  // Down to half the chance by every round: nearly the likeliest first, without sorting.
  for (let least = 0.5; frontier.length > 0 && graph.beliefs < limit; least /= 2) {
    const unlikely: Reach[] = [];
    const ahead = [...frontier];
    for (let next = ahead.pop(); next && graph.beliefs < limit; next = ahead.pop()) {
      const { node, reach } = next;
      if (chosen.has(node) || node.actMinutes <= node.lowerMinutes) continue;
      if (reach < least) {
        unlikely.push(next);
        continue;
      }
      const branch = mostTelling(node, graph.open(node));
      chosen.set(node, branch);
      for (const child of branch?.children ?? [])
        ahead.push({ node: child.node, reach: reach * child.probability });
    }
    frontier = unlikely;
  }
  return chosen;
}

/** The check with the most information per minute; ties go to the one given first. */
function mostTelling({ belief }: BeliefNode, branches: readonly Branch[]): Branch | undefined {
  const before = entropyBits(belief);
  let best: Readonly<{ branch: Branch; worth: number }> | undefined;
  for (const branch of branches) {
    let after = 0;
    for (const { probability, node } of branch.children) after += probability * entropyBits(node.belief);
    // What takes no time would divide by nothing.
    const worth = Math.max(0, before - after) / Math.max(branch.minutes, alikeMinutes);
    if (!best || worth > best.worth + alikeMinutes) best = { branch, worth };
  }
  return best?.branch;
}
