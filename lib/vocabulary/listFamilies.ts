import { familyOf } from "./familyOf";
import type { Instrument } from "./instrument";
import type { Vocabulary } from "./vocabulary";

/** The families that the handbook's instruments are counted under, in the order of the tree; see `familyOf`. */
export function listFamilies(vocabulary: Vocabulary): Instrument[] {
  const inside = [...vocabulary.instruments.values()].filter(
    ({ outside, parent }) => !outside && parent !== undefined,
  );
  const families = new Set(inside.map(({ id }) => familyOf(vocabulary, id)));
  return inside.filter(({ id }) => families.has(id));
}
