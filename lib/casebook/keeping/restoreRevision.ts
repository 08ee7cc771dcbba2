import type { KeepingPlace } from "./keepingPlace";
import { readRevision } from "./readRevision";
import { type Keeper, type RevisedCase, reviseCase } from "./reviseCase";

/**
 * Puts an earlier version of a case in its place again. The restored version is a new one: those after it are kept.
 *
 * @param baseHash the version that is to be replaced
 */
export function restoreRevision(
  number: number,
  baseHash: string,
  place: KeepingPlace,
  keeper: Keeper,
): RevisedCase {
  const text = readRevision(place, number);
  if (text !== undefined) return reviseCase({ text, baseHash }, place, keeper);
  const received = `version ${number}, which is not kept or was damaged`;
  const expected = "one of the versions that are listed";
  return {
    kind: "refused",
    problems: [{ file: place.file, line: 0, field: "version", received, expected }],
  };
}
