import type { PlanOpener, PlanProblem } from "@/lib/diagnosis/plan/planProblem";

/**
 * The least expected minutes, by trying every order of checks after every finding: no memory, no bounds, nothing shared with the
 * planner. Weights are joint probabilities, so nothing is ever divided.
 */
export function naiveMinutes({ states, checks, openers = [], repairs }: PlanProblem): number {
  const doable = new Map<string, PlanOpener>([...openers, ...checks].map((one) => [one.id, one]));
  const neededFor = (id: string, found = new Set<string>()): Set<string> => {
    for (const need of doable.get(id)?.needs ?? []) {
      if (found.has(need)) continue;
      found.add(need);
      neededFor(need, found);
    }
    return found;
  };
  const best = (weights: readonly number[], asked: readonly string[], opened: readonly string[]): number => {
    const acting = repairs.map(({ minutes, riskMinutes, mends, failureMinutes }) =>
      weights.reduce((sum, weight, at) => {
        if (weight === 0) return sum;
        const fails = 1 - (mends[at] ?? 0);
        return sum + weight * (minutes + riskMinutes + (fails === 0 ? 0 : fails * (failureMinutes[at] ?? 0)));
      }, 0),
    );
    const total = weights.reduce((sum, weight) => sum + weight, 0);
    const checking = checks
      .filter(({ id }) => !asked.includes(id))
      .map((check) => {
        const toOpen = [check.id, ...neededFor(check.id)].filter((id) => !opened.includes(id));
        const minutes = [...new Set(toOpen)].reduce((sum, id) => {
          const one = doable.get(id);
          return sum + (one?.minutes ?? 0) + (one?.riskMinutes ?? 0);
        }, 0);
        return check.outcomes.reduce((sum, { likelihoods }) => {
          const joint = weights.map((weight, at) => weight * (likelihoods[at] ?? 0));
          return joint.some((weight) => weight > 0)
            ? sum + best(joint, [...asked, check.id], [...opened, ...toOpen])
            : sum;
        }, minutes * total);
      });
    return Math.min(...acting, ...checking);
  };
  const total = states.reduce((sum, { probability }) => sum + probability, 0);
  return best(
    states.map(({ probability }) => probability / total),
    [],
    [],
  );
}
