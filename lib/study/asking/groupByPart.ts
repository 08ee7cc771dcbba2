import { appliesTo } from "../../vocabulary/appliesTo";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { StudyCheck } from "./openForStudy";

/** Checks that are about one part or what belongs to it; `part` null for what is about parts with few checks each. */
export type PartGroup = Readonly<{ part: string | null; checks: readonly StudyCheck[] }>;

/** Fewer checks make no group of their own. Chosen: a long list then falls into four to eight groups. */
const leastChecks = 4;

/**
 * Groups checks by the part that they are about: the first of theirs that the instrument has. Parts with fewer than four
 * checks are counted under the part they are a part of; what is left over then stands together at the end.
 *
 * @param open in the order that they keep inside their group
 * @returns every check once; groups in the vocabulary's order of parts
 */
export function groupByPart(
  open: readonly StudyCheck[],
  instrument: string,
  vocabulary: Vocabulary,
): PartGroup[] {
  const { parts, partTree } = vocabulary;
  const ownPart = ({ check }: StudyCheck) =>
    check.parts.find((id) => appliesTo(vocabulary, parts.get(id)?.families ?? [], instrument)) ??
    check.parts[0];
  const held = new Map<string, StudyCheck[]>();
  const left: StudyCheck[] = [];
  for (const one of open) {
    const part = ownPart(one);
    if (part === undefined) left.push(one);
    else held.set(part, [...(held.get(part) ?? []), one]);
  }
  const deepestFirst = [...parts.keys()].sort((a, b) => partTree.depth(b) - partTree.depth(a));
  for (const part of deepestFirst) {
    const checks = held.get(part);
    if (!checks || checks.length >= leastChecks) continue;
    held.delete(part);
    const above = parts.get(part)?.parent;
    if (above === undefined) left.push(...checks);
    else held.set(above, [...(held.get(above) ?? []), ...checks]);
  }
  const inOrder = (checks: readonly StudyCheck[]) => open.filter((one) => checks.includes(one));
  return [
    ...[...parts.keys()].flatMap((part) => {
      const checks = held.get(part);
      return checks ? [{ part, checks: inOrder(checks) }] : [];
    }),
    ...(left.length > 0 ? [{ part: null, checks: inOrder(left) }] : []),
  ];
}
