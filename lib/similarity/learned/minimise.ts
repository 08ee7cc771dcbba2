/** The value of a function at a point; fills `gradient`. */
export type Objective = (point: Float64Array, gradient: Float64Array) => number;

/** Past steps that the curvature is estimated from, and halvings of a step before giving up. */
const remembered = 8;
const mostHalvings = 20;
/** Part of the fall that the slope promises which a step must bring. Source: Armijo 1966. */
const leastFall = 1e-4;

export type MinimiseOptions = Readonly<{
  mostSteps: number;
  /** Stop when a step brings less than this, as a share of the value. */
  tolerance: number;
}>;

/**
 * Walks downhill from a point to a minimum of a smooth function.
 *
 * @param start not changed
 * @returns the lowest point found
 * Source: limited-memory BFGS, Nocedal & Wright, Numerical Optimization, algorithm 7.5.
 */
export function minimise(objective: Objective, start: Float64Array, options: MinimiseOptions): Float64Array {
  let point: Float64Array = start.slice();
  let gradient: Float64Array = new Float64Array(start.length);
  let value = objective(point, gradient);
  const steps: { moved: Float64Array; turned: Float64Array; product: number }[] = [];
  for (let step = 0; step < options.mostSteps; step++) {
    const direction = downhill(gradient, steps);
    const slope = dot(gradient, direction);
    if (!(slope < 0)) return point;
    const next = searchLine(objective, point, value, direction, slope);
    if (next === undefined) return point;
    const moved = next.point.map((x, at) => x - (point[at] ?? 0));
    const turned = next.gradient.map((g, at) => g - (gradient[at] ?? 0));
    const product = dot(moved, turned);
    if (product > 1e-12) steps.push({ moved, turned, product });
    if (steps.length > remembered) steps.shift();
    const fall = value - next.value;
    ({ point, gradient, value } = next);
    if (fall < options.tolerance * Math.max(1, Math.abs(value))) return point;
  }
  return point;
}

function downhill(
  gradient: Float64Array,
  steps: readonly { moved: Float64Array; turned: Float64Array; product: number }[],
): Float64Array {
  const direction = gradient.slice();
  const parts: number[] = [];
  for (const { moved, turned, product } of [...steps].reverse()) {
    const part = dot(moved, direction) / product;
    parts.unshift(part);
    addTimes(direction, turned, -part);
  }
  const last = steps.at(-1);
  const scale = last
    ? last.product / dot(last.turned, last.turned)
    : 1 / Math.max(1, Math.sqrt(dot(gradient, gradient)));
  for (const [at, value] of direction.entries()) direction[at] = value * scale;
  for (const [at, { moved, turned, product }] of steps.entries()) {
    addTimes(direction, moved, (parts[at] ?? 0) - dot(turned, direction) / product);
  }
  return direction.map((value) => -value);
}

function searchLine(
  objective: Objective,
  point: Float64Array,
  value: number,
  direction: Float64Array,
  slope: number,
): { point: Float64Array; gradient: Float64Array; value: number } | undefined {
  const gradient = new Float64Array(point.length);
  let length = 1;
  for (let halving = 0; halving < mostHalvings; halving++) {
    const next = point.slice();
    addTimes(next, direction, length);
    const nextValue = objective(next, gradient);
    if (nextValue <= value + leastFall * length * slope) return { point: next, gradient, value: nextValue };
    length /= 2;
  }
  return undefined;
}

function dot(a: Float64Array, b: Float64Array): number {
  let sum = 0;
  for (let at = 0; at < a.length; at++) sum += (a[at] ?? 0) * (b[at] ?? 0);
  return sum;
}

function addTimes(into: Float64Array, what: Float64Array, times: number): void {
  for (let at = 0; at < into.length; at++) into[at] = (into[at] ?? 0) + times * (what[at] ?? 0);
}
