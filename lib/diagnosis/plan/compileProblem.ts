import type { PlanOpener, PlanProblem } from "./planProblem";

/** States, checks and openers are kept as bits of one number each. */
const mostBits = 30;
/** How far a state's likelihoods may be from adding up to 1. */
const roundingAllowed = 1e-6;

/** A check in numbers. */
export type CompiledCheck = Readonly<{
  minutes: number;
  /** One array an outcome: P(outcome | state). */
  likelihoods: readonly Float64Array[];
  /** Every likelihood is 0 or 1: then the states that are left say all that its outcome told. */
  certain: boolean;
  /** Bits of the openings that it needs, theirs included. */
  needs: number;
  /** Its own bit, where other checks need it; 0 where none does. */
  opening: number;
}>;

/** A planning problem in numbers, its cost in minutes with risk included. */
export type CompiledProblem = Readonly<{
  prior: Float64Array;
  checks: readonly CompiledCheck[];
  /** Minutes of each opening, by its bit. */
  openings: readonly Readonly<{ id: string; minutes: number }>[];
  /** Expected minutes of each repair in each state, failing included; one array a repair. */
  actMinutes: readonly Float64Array[];
}>;

/**
 * Turns a planning problem into numbers and makes sure that it is one.
 *
 *   minutes of a repair in a state = minutes + risk minutes + (1 - P(mended | state)) x failure minutes
 *
 * @throws RangeError on an impossible number, a list of another length than the states', an unknown need, an id twice, no repair,
 * or more than 30 states, checks or openings
 */
export function compileProblem({ states, checks, openers = [], repairs }: PlanProblem): CompiledProblem {
  for (const [what, list] of Object.entries({ states, checks, openers })) {
    if (list.length > mostBits)
      throw new RangeError(
        `there must be at most ${mostBits} ${what}; got ${list.length}; leave the least likely out`,
      );
  }
  if (repairs.length === 0)
    throw new RangeError("there must be a repair; got none; add one for when all else fails");
  const total = states.reduce(
    (sum, { id, probability }) => sum + amount(probability, `probability of ${id}`),
    0,
  );
  if (!(total > 0))
    throw new RangeError(`some state must be possible; got probabilities adding up to ${total}; add one`);
  const doable = new Map<string, PlanOpener>();
  for (const one of [...openers, ...checks]) {
    if (doable.has(one.id)) throw new RangeError(`an id must stand once; got ${one.id} twice; rename one`);
    doable.set(one.id, one);
  }
  const needed = [...new Set([...doable.values()].flatMap(({ needs = [] }) => needs))];
  const openings = needed.map((id) => {
    const opener = doable.get(id);
    if (!opener) throw new RangeError(`a need must name a check or an opener; got ${id}; add it`);
    return { id, minutes: costOf(opener) };
  });
  const bitOf = (id: string) => (needed.includes(id) ? 1 << needed.indexOf(id) : 0);
  const needsOf = ({ needs = [] }: PlanOpener): number => {
    let bits = 0;
    const visit = (id: string) => {
      if (bits & bitOf(id)) return;
      bits |= bitOf(id);
      for (const further of doable.get(id)?.needs ?? []) visit(further);
    };
    for (const id of needs) visit(id);
    return bits;
  };
  return {
    prior: Float64Array.from(states, ({ probability }) => probability / total),
    checks: checks.map((check) => {
      const likelihoods = check.outcomes.map(({ id, likelihoods: row }) =>
        perState(row, states.length, `likelihoods of ${check.id} ${id}`, 1),
      );
      for (const [at, state] of states.entries()) {
        const sum = likelihoods.reduce((all, row) => all + (row[at] ?? 0), 0);
        if (!(Math.abs(sum - 1) <= roundingAllowed))
          throw new RangeError(
            `likelihoods must add up to 1; got ${sum} for ${check.id} given ${state.id}; scale them`,
          );
      }
      const certain = likelihoods.every((row) => row.every((p) => p === 0 || p === 1));
      const opening = bitOf(check.id);
      // A check in a circle of needs does not need itself.
      return { minutes: costOf(check), likelihoods, certain, needs: needsOf(check) & ~opening, opening };
    }),
    openings,
    actMinutes: repairs.map((repair) => {
      const mends = perState(repair.mends, states.length, `mends of ${repair.id}`, 1);
      const failure = perState(repair.failureMinutes, states.length, `failure minutes of ${repair.id}`);
      const minutes = costOf(repair);
      // 0 x Infinity is no number: what cannot fail costs nothing by failing.
      return mends.map((p, at) => minutes + (p < 1 ? (1 - p) * (failure[at] ?? 0) : 0));
    }),
  };
}

function costOf({
  id,
  minutes,
  riskMinutes,
}: Readonly<{ id: string; minutes: number; riskMinutes: number }>): number {
  const cost = amount(minutes, `minutes of ${id}`) + amount(riskMinutes, `risk minutes of ${id}`);
  if (!Number.isFinite(cost))
    throw new RangeError(`minutes must be finite; got ${cost} for ${id}; leave it out`);
  return cost;
}

function amount(value: number, what: string): number {
  if (!(value >= 0)) throw new RangeError(`${what} must be 0 or more; got ${value}; mend it`);
  return value;
}

function perState(
  values: readonly number[],
  length: number,
  what: string,
  most = Number.POSITIVE_INFINITY,
): Float64Array {
  if (values.length !== length)
    throw new RangeError(
      `${what} must have one number a state; got ${values.length} for ${length}; fill it up`,
    );
  return Float64Array.from(values, (value) => {
    if (amount(value, what) > most)
      throw new RangeError(`${what} must be at most ${most}; got ${value}; mend it`);
    return value;
  });
}
