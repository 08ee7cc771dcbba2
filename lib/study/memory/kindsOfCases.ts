import type { Case } from "../../casebook/caseFile";
import { rootCauses } from "../../casebook/rootCauses";
import { familyOf } from "../../vocabulary/familyOf";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/** By which kinds progress is counted; a case that is gone counts under none. */
export function kindsOfCases(cases: ReadonlyMap<string, Case>, vocabulary: Vocabulary) {
  const of = (kinds: (kase: Case) => readonly string[]) => (id: string) => {
    const kase = cases.get(id);
    return kase ? kinds(kase) : [];
  };
  return { family: of(({ instrument }) => [familyOf(vocabulary, instrument)]), cause: of(rootCauses) };
}
