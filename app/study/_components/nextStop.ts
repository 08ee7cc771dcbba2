import { randomInt } from "node:crypto";
import { today } from "@/app/_data/today";
import type { Learner } from "@/lib/casebook/learners/learnerFile";
import type { Lesson } from "@/lib/casebook/lessons/lessonFile";
import type { Bench } from "@/lib/consult/bench/bench";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import { dueList } from "@/lib/study/memory/dueList";
import { jobsOf } from "@/lib/study/memory/jobsOf";
import { caseHref, nextCaseHref, type StudyQuery, seeds } from "./studyQuery";

/** Where it goes on after the feedback, and what to call it. */
export type NextStop = Readonly<{ href: string; label: string }>;

/**
 * Where it goes on: the next job of the lesson, or its end; after one that came back the next that does; else another of the
 * same sitting.
 */
export function nextStop(
  query: StudyQuery,
  { cases }: Pick<Bench, "cases">,
  learner: Learner | undefined,
  lesson: Lesson | undefined,
): NextStop {
  const isFit = (id: string) => {
    const kase = cases.get(id);
    return kase !== undefined && isFitForStudy(kase);
  };
  if (lesson) {
    const at = lesson.cases.indexOf(query.case ?? "");
    const next = lesson.cases.slice(at + 1).find(isFit);
    return next === undefined
      ? { href: `/study/lessons/${lesson.id}`, label: "End of the lesson" }
      : { href: caseHref(next, lesson.id), label: "Next job of the lesson" };
  }
  if (learner && query.seed === null) {
    const [next] = dueList(jobsOf(learner), today(), isFit).now;
    if (next) return { href: caseHref(next.case), label: "See the next one again" };
  }
  return { href: nextCaseHref(query, randomInt(seeds)), label: "Next case" };
}
