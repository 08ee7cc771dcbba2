import { labelOf } from "@/app/_components/labelOf";
import type { Case } from "@/lib/casebook/caseFile";
import type { StudiedJob } from "@/lib/study/memory/jobsOf";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { caseHref } from "./studyQuery";

/** A job that comes back, told as it came over the counter: what it was is not given away. */
export type DueView = Readonly<{
  id: string;
  href: string;
  instrument: string;
  complaint: string;
  went: StudiedJob["went"];
  last: string;
  due: string;
}>;

/** Puts jobs that come back into words; a job that the casebook no longer has is left out. */
export const dueViews = (
  jobs: readonly StudiedJob[],
  cases: ReadonlyMap<string, Case>,
  { instruments }: Pick<Vocabulary, "instruments">,
): DueView[] =>
  jobs.flatMap(({ case: id, went, last, due }) => {
    const kase = cases.get(id);
    if (!kase) return [];
    const instrument = labelOf(instruments, kase.instrument);
    return [{ id, href: caseHref(id), instrument, complaint: kase.complaint, went, last, due }];
  });
