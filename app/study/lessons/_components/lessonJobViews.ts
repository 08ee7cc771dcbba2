import { labelOf } from "@/app/_components/labelOf";
import type { Case } from "@/lib/casebook/caseFile";
import type { Lesson } from "@/lib/casebook/lessons/lessonFile";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import type { HowItWent } from "@/lib/study/memory/howItWent";
import type { StudiedJob } from "@/lib/study/memory/jobsOf";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";

/** A job of a lesson as it came in: what it was is not given away. */
export type LessonJobView = Readonly<{
  id: string;
  /** From 1. */
  place: number;
  instrument: string;
  complaint: string;
  /** Whether it can be worked through: it may have left the casebook since. */
  isThere: boolean;
  /** How it went last; null where it was not met, or where nobody said who studies. */
  went: HowItWent | null;
}>;

/** Puts a lesson's jobs into words, in its order. */
export const lessonJobViews = (
  { cases: ids }: Lesson,
  cases: ReadonlyMap<string, Case>,
  { instruments }: Pick<Vocabulary, "instruments">,
  jobs: readonly StudiedJob[],
): LessonJobView[] =>
  ids.map((id, at) => {
    const kase = cases.get(id);
    return {
      id,
      place: at + 1,
      instrument: kase ? labelOf(instruments, kase.instrument) : id,
      complaint: kase ? kase.complaint : "This job is no longer in the casebook.",
      isThere: kase !== undefined && isFitForStudy(kase),
      went: jobs.find((job) => job.case === id)?.went ?? null,
    };
  });
