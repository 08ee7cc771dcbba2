import type { CompiledCheck, CompiledProblem } from "./compileProblem";

/** A belief reached by some findings, with bounds on the least expected minutes from here on. */
export type BeliefNode = {
  readonly belief: Float64Array;
  /** Bits of the states still possible, and of what stands open. */
  readonly support: number;
  readonly opened: number;
  /** One character a check: which outcome it had; `.` where it was not asked or its outcome shows in the support. */
  readonly found: string;
  /** Grows with every finding, so that going by falling rank visits every node after its children. */
  readonly rank: number;
  /** Expected minutes of acting now on the best repair, and which it is. */
  readonly actMinutes: number;
  readonly repair: number;
  /** Expected minutes of acting for somebody who knew the state. */
  readonly knownMinutes: number;
  lowerMinutes: number;
  upperMinutes: number;
  /** The branch that the upper bound rests on; undefined for acting now. */
  choice: Branch | undefined;
  /** One a check that tells something; undefined until the node has been opened up. */
  branches: readonly Branch[] | undefined;
};

/** Asking one check: what it costs here, with what has to be opened for it, and where each outcome leads. */
export type Branch = Readonly<{
  check: number;
  minutes: number;
  children: readonly Readonly<{ outcome: number; probability: number; node: BeliefNode }>[];
}>;

/** All beliefs met so far; beliefs reached in different orders are one node. */
export class PlanGraph {
  readonly problem: CompiledProblem;
  readonly root: BeliefNode;
  /** Work done: beliefs worked out. */
  beliefs = 0;
  readonly #nodes = new Map<string, BeliefNode>();
  readonly #opened: BeliefNode[] = [];
  readonly #bounds: Float64Array | undefined;

  /** @param bounds lower bounds weighted by the prior, for each set of states, where they are known; see `freeTestsBound` */
  constructor(problem: CompiledProblem, bounds?: Float64Array) {
    this.problem = problem;
    // Below the root they hold where beliefs are the prior of the states left, and where no check comes free with another.
    const everywhere = problem.checks.every(({ certain, opening }) => certain && opening === 0);
    this.#bounds = everywhere ? bounds : undefined;
    this.root = this.#nodeAt(problem.prior, 0, ".".repeat(problem.checks.length));
    const bound = bounds?.[this.root.support] ?? 0;
    this.root.lowerMinutes = Math.min(this.root.actMinutes, Math.max(this.root.lowerMinutes, bound));
  }

  /** Works out where every check that tells something here would lead; once. */
  open(node: BeliefNode): readonly Branch[] {
    if (!node.branches) {
      node.branches = this.problem.checks.flatMap((check, at) => this.#branch(node, check, at) ?? []);
      this.#opened.push(node);
    }
    return node.branches;
  }

  /** The nodes that were opened up, children before parents. */
  openedNodes(): readonly BeliefNode[] {
    return this.#opened.sort((a, b) => b.rank - a.rank);
  }

  #branch(node: BeliefNode, check: CompiledCheck, at: number): Branch | undefined {
    if (node.found[at] !== "." || !tellsApart(check, node.belief)) return undefined;
    const { belief, opened, found } = node;
    const opening = opened | check.needs | check.opening;
    const children: Branch["children"][number][] = [];
    for (const [outcome, row] of check.likelihoods.entries()) {
      const joint = new Float64Array(belief.length);
      let probability = 0;
      for (let state = 0; state < joint.length; state++) {
        const p = (belief[state] ?? 0) * (row[state] ?? 0);
        joint[state] = p;
        probability += p;
      }
      if (!(probability > 0)) continue;
      for (let state = 0; state < joint.length; state++) joint[state] = (joint[state] ?? 0) / probability;
      const mark = check.certain ? "." : String.fromCharCode(48 + outcome);
      const after = found.slice(0, at) + mark + found.slice(at + 1);
      children.push({ outcome, probability, node: this.#nodeAt(joint, opening, after) });
    }
    return { check: at, minutes: minutesHere(this.problem, check, opened), children };
  }

  #nodeAt(belief: Float64Array, opened: number, found: string): BeliefNode {
    this.beliefs += 1;
    let support = 0;
    let left = 0;
    for (let state = 0; state < belief.length; state++) {
      if ((belief[state] ?? 0) > 0) {
        support |= 1 << state;
        left += 1;
      }
    }
    const key = `${found}${support},${opened}`;
    const known = this.#nodes.get(key);
    if (known) return known;
    const { actMinutes, repair, knownMinutes } = weighActing(this.problem, belief);
    let least = Number.POSITIVE_INFINITY;
    let asked = 0;
    for (const [at, check] of this.problem.checks.entries()) {
      if (found[at] !== ".") asked += 1;
      else least = Math.min(least, minutesHere(this.problem, check, opened));
    }
    const bound = this.#bounds ? (this.#bounds[support] ?? 0) / chanceOf(this.problem.prior, support) : 0;
    const node: BeliefNode = {
      belief,
      support,
      opened,
      found,
      rank: asked + belief.length - left,
      actMinutes,
      repair,
      knownMinutes,
      // Whoever does not act asks at least one check, and after that knows no more than everything.
      lowerMinutes: Math.min(actMinutes, Math.max(bound, knownMinutes + least)),
      upperMinutes: actMinutes,
      choice: undefined,
      branches: undefined,
    };
    this.#nodes.set(key, node);
    return node;
  }
}

function chanceOf(prior: Float64Array, support: number): number {
  return prior.reduce((sum, p, state) => sum + (support & (1 << state) ? p : 0), 0);
}

/** Minutes of a check with what has still to be opened for it; the way to one that was opened for another is paid. */
function minutesHere({ openings }: CompiledProblem, check: CompiledCheck, opened: number): number {
  let minutes = check.opening & opened ? 0 : check.minutes;
  let missing = check.needs & ~opened;
  while (missing) {
    const bit = 31 - Math.clz32(missing);
    minutes += openings[bit]?.minutes ?? 0;
    missing &= ~(1 << bit);
  }
  return minutes;
}

/** Whether some outcome is likelier in one possible state than in another. */
function tellsApart({ likelihoods }: CompiledCheck, belief: Float64Array): boolean {
  return likelihoods.some((row) => {
    let first: number | undefined;
    for (let state = 0; state < belief.length; state++) {
      if (!((belief[state] ?? 0) > 0)) continue;
      first ??= row[state] ?? 0;
      if (row[state] !== first) return true;
    }
    return false;
  });
}

/** The best repair by what is believed, and what acting would cost somebody who knew the state. */
function weighActing({ actMinutes: repairs }: CompiledProblem, belief: Float64Array) {
  let actMinutes = Number.POSITIVE_INFINITY;
  let repair = 0;
  for (const [at, minutes] of repairs.entries()) {
    let sum = 0;
    // A state that is ruled out must not turn a forbidden repair into 0 x Infinity.
    for (let state = 0; state < belief.length; state++)
      if ((belief[state] ?? 0) > 0) sum += (belief[state] ?? 0) * (minutes[state] ?? 0);
    if (sum < actMinutes) [actMinutes, repair] = [sum, at];
  }
  let knownMinutes = 0;
  for (let state = 0; state < belief.length; state++) {
    const p = belief[state] ?? 0;
    if (!(p > 0)) continue;
    let least = Number.POSITIVE_INFINITY;
    for (const minutes of repairs) least = Math.min(least, minutes[state] ?? 0);
    knownMinutes += p * least;
  }
  return { actMinutes, repair, knownMinutes };
}
