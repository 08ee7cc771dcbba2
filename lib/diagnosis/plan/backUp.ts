import type { BeliefNode, Branch } from "./planGraph";

/** Expected minutes that differ by less than this are alike: rounding must not choose a check. */
export const alikeMinutes = 1e-9;

/**
 * Brings a node's bounds up to date with its children's.
 *
 *   V(b) = min( act(b), min over checks of minutes + sum over outcomes of P(outcome) V(b | outcome) )
 *
 * Acting wins where it costs at most as much as checking on (Heckerman, Breese & Rommelse 1995); among checks that cost
 * alike the one that is cheaper by itself, then the one given first.
 *
 * @returns the branch with the lowest lower bound; undefined where that is acting
 */
export function backUp(node: BeliefNode): Branch | undefined {
  let [lower, upper] = [node.actMinutes, node.actMinutes];
  let [choice, hopeful]: (Branch | undefined)[] = [];
  for (const branch of node.branches ?? []) {
    let [low, high] = [branch.minutes, branch.minutes];
    for (const { probability, node: child } of branch.children) {
      low += probability * child.lowerMinutes;
      high += probability * child.upperMinutes;
    }
    const alike = choice !== undefined && Math.abs(high - upper) <= alikeMinutes;
    if (alike ? branch.minutes < (choice?.minutes ?? 0) : high < upper - alikeMinutes) {
      [upper, choice] = [high, branch];
    }
    if (low < lower - alikeMinutes) [lower, hopeful] = [low, branch];
  }
  // Bounds only ever get tighter: what was shown before stays true.
  if (node.branches) node.lowerMinutes = Math.max(node.lowerMinutes, Math.min(lower, upper));
  [node.upperMinutes, node.choice] = [upper, choice];
  return hopeful;
}
