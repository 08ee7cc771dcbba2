import type { Case } from "./caseFile";
import type { Casebook } from "./loadCasebook";

/** The order of each casebook that was asked for, kept as long as its cases are; `putCase` keeps it right. */
const orders = new WeakMap<Casebook["cases"], readonly Case[]>();

/**
 * All cases, the one received last first; ties by id, the greater first. Sorted once a casebook.
 *
 * @returns a list that never changes: after a case has been put in, another list comes
 */
export function newestFirst({ cases }: Casebook): readonly Case[] {
  const known = orders.get(cases);
  if (known !== undefined) return known;
  const sorted = [...cases.values()].sort(compareNewest);
  orders.set(cases, sorted);
  return sorted;
}

/** Takes over into a casebook's order, where it is kept, that one case has come in place of its earlier version. */
export function reorderNewest({ cases }: Casebook, kase: Case, before: Case | undefined): void {
  const known = orders.get(cases);
  if (known === undefined) return;
  const rest = before === undefined ? [...known] : known.toSpliced(placeOf(known, before), 1);
  rest.splice(placeOf(rest, kase), 0, kase);
  orders.set(cases, rest);
}

/** The place of a case in a sorted list, from 0: its own, or where it belongs. */
function placeOf(sorted: readonly Case[], kase: Case): number {
  let low = 0;
  let high = sorted.length;
  while (low < high) {
    const middle = (low + high) >>> 1;
    const one = sorted[middle];
    if (one !== undefined && compareNewest(one, kase) < 0) low = middle + 1;
    else high = middle;
  }
  return low;
}

const compareNewest = (a: Case, b: Case) =>
  a.received === b.received ? (a.id === b.id ? 0 : a.id < b.id ? 1 : -1) : a.received < b.received ? 1 : -1;
