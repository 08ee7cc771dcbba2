import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { Story } from "@/app/_components/Story";
import { currentLearner } from "@/app/_data/currentLearner";
import { lessonOf } from "@/app/_data/lessonShelf";
import { getShop } from "@/app/_data/shop";
import { caseHref } from "@/app/study/_components/studyQuery";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import { jobsOf } from "@/lib/study/memory/jobsOf";
import { LessonJobs } from "../_components/LessonJobs";
import { lessonJobViews } from "../_components/lessonJobViews";
import styles from "./page.module.css";

type Props = Readonly<{ params: Promise<{ id: string }> }>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  return { title: lessonOf((await params).id)?.title ?? "Not here" };
}

/** A lesson: its word of introduction, its jobs in their order as they came in, and where one goes on. */
export default async function LessonPage({ params }: Props) {
  const lesson = lessonOf((await params).id);
  if (!lesson) notFound();
  const { bench, vocabulary } = await getShop();
  const { learner } = await currentLearner();
  const views = lessonJobViews(lesson, bench.cases, vocabulary, learner ? jobsOf(learner) : []);
  const next = views.find(({ went, isThere }) => went === null && isThere);
  const met = views.filter(({ went }) => went !== null).length;
  const got = views.filter(({ went }) => went === "got it" || went === "got it cleanly").length;
  const first = lesson.cases.find((id) => {
    const kase = bench.cases.get(id);
    return kase !== undefined && isFitForStudy(kase);
  });
  return (
    <main className="page" id="main">
      <p className="unprinted">
        <Link href="/study">Study</Link>
      </p>
      <h1>{lesson.title}</h1>
      <p className="soft">
        {lesson.by ? `Put together by ${lesson.by}. ` : ""}
        {lesson.demo ? "Demo lesson, invented." : ""}
      </p>
      {lesson.introduction === "" ? null : (
        <div className={styles.introduction}>
          <Story markdown={lesson.introduction} />
        </div>
      )}
      <p className={`${controls.row} unprinted`}>
        {next ? (
          <a className={controls.lead} href={caseHref(next.id, lesson.id)}>
            {met === 0 ? "Begin" : `Go on with job ${next.place}`}
          </a>
        ) : first ? (
          <a className={controls.plain} href={caseHref(first, lesson.id)}>
            Go through it again
          </a>
        ) : null}
        <Link className={controls.plain} href={`/study/lessons/build?lesson=${lesson.id}`} prefetch={false}>
          Change this lesson
        </Link>
      </p>
      {next === undefined && met > 0 ? (
        <p role="status">
          You have been through all of it, and got {got} of {views.length}.
        </p>
      ) : null}
      <Section
        title="The jobs"
        aside={learner ? `${met} of ${views.length} worked through` : `${views.length} in this order`}
      >
        <LessonJobs views={views} lesson={lesson.id} />
      </Section>
    </main>
  );
}
