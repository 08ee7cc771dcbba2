import fc from "fast-check";
import type { PlanProblem } from "@/lib/diagnosis/plan/planProblem";

const minutes = fc.integer({ min: 0, max: 9 });

/** Probabilities with many zeros and ties among them, so that certain checks and impossible states come up. */
const shares = (length: number) =>
  fc
    .array(fc.constantFrom(0, 0, 1, 1, 2, 5), { minLength: length, maxLength: length })
    .filter((weights) => weights.some((weight) => weight > 0))
    .map((weights) => {
      const sum = weights.reduce<number>((all, weight) => all + weight, 0);
      return weights.map((weight) => weight / sum);
    });

const perState = <T>(value: fc.Arbitrary<T>, count: number) =>
  fc.array(value, { minLength: count, maxLength: count });

/** Small problems of every kind: certain and erring checks, openings, checks that open the way to others, forbidden repairs. */
export const anyPlanProblem: fc.Arbitrary<PlanProblem> = fc
  .record({ states: fc.integer({ min: 1, max: 4 }), checks: fc.integer({ min: 0, max: 3 }) })
  .chain(({ states: count, checks: checkCount }) => {
    const ids = Array.from({ length: checkCount }, (_, at) => `check ${at}`);
    const check = (id: string) =>
      fc
        .record({
          minutes,
          riskMinutes: minutes,
          needs: fc.subarray(["cap", ...ids.filter((other) => other !== id)]),
          rows: fc.integer({ min: 1, max: 3 }).chain((outcomes) => perState(shares(outcomes), count)),
        })
        .map(({ rows, ...rest }) => ({
          id,
          ...rest,
          outcomes: (rows[0] ?? []).map((_, outcome) => ({
            id: `outcome ${outcome}`,
            likelihoods: rows.map((row) => row[outcome] ?? 0),
          })),
        }));
    const repair = (id: string) =>
      fc.record({
        id: fc.constant(id),
        minutes,
        riskMinutes: minutes,
        mends: perState(fc.constantFrom(0, 0, 0.5, 0.9, 1), count),
        failureMinutes: perState(fc.constantFrom(0, 10, 40, 100, Number.POSITIVE_INFINITY), count),
      });
    return fc.record({
      states: shares(count).map((all) => all.map((probability, at) => ({ id: `state ${at}`, probability }))),
      checks: fc.tuple(...ids.map(check)),
      openers: minutes.map((own) => [{ id: "cap", minutes: own, riskMinutes: 0 }]),
      repairs: fc
        .integer({ min: 1, max: 3 })
        .chain((repairs) => fc.tuple(...Array.from({ length: repairs }, (_, at) => repair(`repair ${at}`)))),
    });
  });

/** Numbers in 0..1 that scatter well enough, the same for the same seed. */
function scattered(seed: number): () => number {
  let at = seed;
  return () => {
    at += 1;
    const spread = Math.sin(at * 12.9898 + seed) * 43_758.5453;
    return spread - Math.floor(spread);
  };
}

/** Problems too large to be planned to the end: ten states, twelve erring checks of two to five outcomes. */
export const largePlanProblem: fc.Arbitrary<PlanProblem> = fc
  .integer({ min: 1, max: 10_000 })
  .map((seed): PlanProblem => {
    const draw = scattered(seed);
    const states = Array.from({ length: 10 }, (_, at) => ({ id: `state ${at}`, probability: 0.02 + draw() }));
    const checks = Array.from({ length: 12 }, (_, at) => {
      const count = 2 + Math.floor(4 * draw());
      const rows = states.map(() => {
        const weights = Array.from({ length: count }, () => 0.03 + draw() ** 4);
        const sum = weights.reduce((all, weight) => all + weight, 0);
        return weights.map((weight) => weight / sum);
      });
      return {
        id: `check ${at}`,
        minutes: 1 + 9 * draw(),
        riskMinutes: draw(),
        outcomes: Array.from({ length: count }, (_o, outcome) => ({
          id: `outcome ${outcome}`,
          likelihoods: rows.map((row) => row[outcome] ?? 0),
        })),
      };
    });
    const repairs = states.map((_, at) => ({
      id: `repair ${at}`,
      minutes: 10 + 60 * draw(),
      riskMinutes: 20 * draw(),
      mends: states.map((_s, other) => (other === at ? 0.9 : 0)),
      failureMinutes: states.map(() => 180),
    }));
    return { states, checks, repairs };
  });
