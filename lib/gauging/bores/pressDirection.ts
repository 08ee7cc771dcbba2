import type { Ovality } from "./ovality";

/** Where to press an oval bore round, or why nothing is said. */
export type PressDirection =
  | Readonly<{
      kind: "press";
      /** The two ends of the widest diameter, degrees, under 180 and under 360. */
      atDeg: readonly [number, number];
      /** One standard error either way; null where no reading is left over to tell it. */
      plusMinusDeg: number | null;
      /** Chance that a round bore read with such noise shows as much ovality; null where that cannot be told. */
      chance: number | null;
    }>
  /** An oval is shown, but too small to be pressed. */
  | Readonly<{ kind: "slight"; atDeg: readonly [number, number] }>
  | Readonly<{ kind: "not shown"; chance: number }>
  | Readonly<{ kind: "round" }>
  | Readonly<{ kind: "too few readings" }>;

/** What a round bore would show one time in twenty is not worth pressing. Chosen, as is usual. */
const mostChance = 0.05;
/** Longest less shortest under half a thou is called round. Common practice. */
const leastOvalMm = 0.0127;

/**
 * Says where an oval bore wants pressing: on the two ends of its widest diameter, so that it gives way along the narrowest.
 *
 *   chance = (1 + (a / s)^2 / v)^(-v / 2),  v = n - 3: the F test that both coefficients of the second harmonic are 0
 *
 * With unevenly spread angles the standard error s of the amplitude stands in for both coefficients', which is near enough.
 *
 * @param oval what `ovality` found
 * @returns `not shown` where noise explains the ovality; with three readings the direction is given without any error
 * @example pressDirection({ kind: "too few readings", distinctAngles: 2, write: "" }).kind // "too few readings"
 * Source: Draper & Smith, Applied Regression Analysis, the F test of two coefficients; where to press: common practice.
 */
export function pressDirection(oval: Ovality): PressDirection {
  if (oval.kind === "too few readings") return { kind: "too few readings" };
  const { widestDeg, amplitudeMm, standardErrors, residualsMm } = oval;
  if (widestDeg === null) return { kind: "round" };
  const atDeg = [widestDeg, widestDeg + 180] as const;
  const isSlight = 4 * amplitudeMm < leastOvalMm;
  if (!standardErrors && isSlight) return { kind: "slight", atDeg };
  if (!standardErrors) return { kind: "press", atDeg, plusMinusDeg: null, chance: null };
  const freedom = residualsMm.length - 3;
  const chance = (1 + (amplitudeMm / standardErrors.amplitudeMm) ** 2 / freedom) ** (-freedom / 2);
  if (chance > mostChance) return { kind: "not shown", chance };
  if (isSlight) return { kind: "slight", atDeg };
  return { kind: "press", atDeg, plusMinusDeg: standardErrors.widestDeg, chance };
}
