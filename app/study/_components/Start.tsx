import { randomInt } from "node:crypto";
import { redirect } from "next/navigation";
import type { Case } from "@/lib/casebook/caseFile";
import type { Bench } from "@/lib/consult/bench";
import { isFitForStudy } from "@/lib/study/isFitForStudy";
import { pickCase } from "@/lib/study/pickCase";
import { familyOf } from "@/lib/vocabulary/familyOf";
import { listFamilies } from "@/lib/vocabulary/listFamilies";
import { Choose } from "./Choose";
import { type StudyQuery, seeds, studyHref } from "./studyQuery";

type Props = Readonly<{ query: StudyQuery; bench: Bench }>;

/** Sends on to the case whose turn it is, or offers the families. */
export function Start({ query, bench }: Props) {
  const { vocabulary } = bench;
  const fit = [...bench.cases.values()].filter(isFitForStudy);
  const family = (kase: Case) => familyOf(vocabulary, kase.instrument);
  if (query.seed !== null) {
    const ids = fit
      .filter((kase) => query.family === null || family(kase) === query.family)
      .map(({ id }) => id);
    const picked = pickCase(ids, query.seed, query.turn);
    if (picked !== undefined) redirect(studyHref({ ...query, case: picked, asked: [] }));
  }
  const families = listFamilies(vocabulary)
    .map(({ id, label }) => ({ id, label, cases: fit.filter((kase) => family(kase) === id).length }))
    .filter(({ cases }) => cases > 0);
  return <Choose families={families} total={fit.length} seed={randomInt(seeds)} />;
}
