import { describe, expect, it } from "vitest";
import { CauseModel } from "@/lib/diagnosis/causeModel";
import { informationGainBits } from "@/lib/diagnosis/informationGain";
import { weighCauses } from "@/lib/diagnosis/posterior";
import { rankChecks } from "@/lib/diagnosis/rankChecks";

/**
 * Shortness of breath after a visit to Asia: has the patient lung cancer, and what should be asked next?
 * A visit, S smoker, T tuberculosis, L lung cancer, B bronchitis, X X-ray, D shortness of breath.
 * Source: Lauritzen & Spiegelhalter 1988, Local computations with probabilities on graphical structures, section 2 (tables from
 * memory). The posteriors and gains below were recomputed from the joint distribution.
 */
type World = Readonly<Record<"A" | "S" | "T" | "L" | "B" | "X" | "D", boolean>>;

const weigh = (p: number, happens: boolean) => (happens ? p : 1 - p);
const truths = [true, false] as const;
const worlds: readonly Readonly<{ world: World; p: number }>[] = truths.flatMap((A) =>
  truths.flatMap((S) =>
    truths.flatMap((T) =>
      truths.flatMap((L) =>
        truths.flatMap((B) =>
          truths.flatMap((X) =>
            truths.map((D) => {
              const either = T || L;
              const breath = either ? (B ? 0.9 : 0.7) : B ? 0.8 : 0.1;
              const p =
                weigh(0.01, A) *
                weigh(0.5, S) *
                weigh(A ? 0.05 : 0.01, T) *
                weigh(S ? 0.1 : 0.01, L) *
                weigh(S ? 0.6 : 0.3, B) *
                weigh(either ? 0.98 : 0.05, X) *
                weigh(breath, D);
              return { world: { A, S, T, L, B, X, D }, p };
            }),
          ),
        ),
      ),
    ),
  ),
);

type Sign = Exclude<keyof World, "L">;
/** What was seen of some signs, as one finding: signs that hang together given the cause must not be counted one by one. */
const nameOf = (world: World, signs: readonly Sign[]) =>
  signs.map((sign) => `${sign} ${world[sign] ? "yes" : "no"}`).join(", ");
const outcomesOf = (signs: readonly Sign[]) => [...new Set(worlds.map(({ world }) => nameOf(world, signs)))];

/** The engine's model, having seen very many patients that are as `given` in the shares of the joint distribution. */
function modelOf(kinds: readonly (readonly Sign[])[], given: (world: World) => boolean) {
  const model = new CauseModel(
    ["L", "not L"].map((id) => ({ id, jobs: 1, tellTales: new Map() })),
    kinds.map((signs) => {
      const outcomes = outcomesOf(signs);
      return { key: signs.join(""), outcomes, background: outcomes.map(() => 1 / outcomes.length) };
    }),
  );
  const patients = 1e12;
  for (const { world, p } of worlds.filter((one) => given(one.world))) {
    const findings = new Map(kinds.map((signs) => [signs.join(""), nameOf(world, signs)]));
    model.learn({ causes: [{ id: world.L ? "L" : "not L", share: p * patients }], findings });
  }
  return model;
}
/** P(L | what was seen) by the engine. */
function lungCancer(signs: readonly Sign[], seen: string): number {
  const model = modelOf([signs], () => true);
  return weighCauses(model, new Map([[signs.join(""), seen]]), { nonePrior: 0 }).causes[0] ?? 0;
}

describe("Asia", () => {
  it.each<[readonly Sign[], string, number]>([
    [["D"], "D yes", 0.102759],
    [["D", "A"], "D yes, A yes", 0.099525],
    [["D", "A", "S"], "D yes, A yes, S yes", 0.145519],
    [["D", "A", "S"], "D yes, A yes, S no", 0.022567],
    [["X"], "X yes", 0.488711],
  ])("after %s weighs lung cancer as the joint distribution does: %s", (signs, seen, published) => {
    expect(lungCancer(signs, seen)).toBeCloseTo(published, 6);
  });

  it("asks next, of a patient short of breath, for the X-ray, then whether he smokes, and hardly where he has been", () => {
    const model = modelOf([["X"], ["S"], ["A"]], ({ D }) => D);
    const belief = weighCauses(model, new Map(), { nonePrior: 0 });
    expect(belief.causes[0]).toBeCloseTo(0.102759, 6);
    const gain = (key: string) => informationGainBits(model, belief, key);
    expect(gain("X")).toBeCloseTo(0.301746, 6);
    expect(gain("S")).toBeCloseTo(0.034277, 6);
    expect(gain("A")).toBeCloseTo(0.000001, 6);
    const questions = ["A", "S", "X"].map((id) => ({ id, gainBits: gain(id), minutes: 1, riskClass: 0 }));
    // What tells less than a hundredth of a bit is not asked at all.
    expect(rankChecks(questions).map(({ id }) => id)).toEqual(["X", "S"]);
  });
});
