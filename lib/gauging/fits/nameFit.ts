import type { Clearance } from "./clearance";
import { fitClearance } from "./fitClearance";
import { isoSteps } from "./isoTolerances";

/** The classes that a clearance agrees with, or why none can be named. */
export type NamedFit =
  | Readonly<{ kind: "within" | "could be"; names: readonly string[] }>
  | Readonly<{ kind: "none"; why: string }>;

/** Hole and shaft that are usually put together, tightest first. Source: ISO 286-1 for the pairs (from memory). */
const usualPairs = [
  ["H7", "h6"],
  ["H6", "g5"],
  ["H7", "g6"],
  ["H7", "f7"],
] as const;

/**
 * Names the ISO classes of fit whose clearance a measured one agrees with. It speaks of the clearance alone: which size the maker
 * called nominal is not known.
 *
 * @param clearance the bounds, mm
 * @param nominalMm the piston's size
 * @returns `within`: the classes that hold the whole interval, narrowest first; else `could be`: those that overlap it, tightest
 * first; `none` outside the table's sizes, and where no class overlaps
 * @example nameFit({ leastMm: 0.01, mostMm: 0.02, standing: "sure-clearance" }, 17) // within H6/g5, H7/h6, H7/g6
 * Source: ISO 286-1 and ISO 286-2.
 */
export function nameFit({ leastMm, mostMm, standing }: Clearance, nominalMm: number): NamedFit {
  const classes = usualPairs.flatMap(([hole, shaft]) => {
    const allowed = fitClearance(hole, shaft, nominalMm);
    return allowed ? [{ name: `${hole}/${shaft}`, ...allowed }] : [];
  });
  if (classes.length === 0)
    return {
      kind: "none",
      why: `the table held here is for sizes over ${isoSteps[0].over} up to ${isoSteps.at(-1)?.upTo} mm`,
    };
  if (standing === "sure-interference") return { kind: "none", why: "the piston is larger than the bore" };
  const within = classes
    .filter((fit) => leastMm !== null && mostMm !== null && leastMm >= fit.leastMm && mostMm <= fit.mostMm)
    .sort((a, b) => a.mostMm - a.leastMm - (b.mostMm - b.leastMm));
  if (within.length > 0) return { kind: "within", names: within.map(({ name }) => name) };
  const overlapping = classes.filter(
    (fit) => (leastMm === null || leastMm <= fit.mostMm) && (mostMm === null || mostMm >= fit.leastMm),
  );
  return overlapping.length > 0
    ? { kind: "could be", names: overlapping.map(({ name }) => name) }
    : { kind: "none", why: "it is wider than every class in the table" };
}
