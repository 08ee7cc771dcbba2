import type { Metadata } from "next";
import Link from "next/link";
import { hashOfLesson, whatHinders } from "@/app/_data/keepLesson";
import { lessonOf } from "@/app/_data/lessonShelf";
import { getShop } from "@/app/_data/shop";
import { newestFirst } from "@/lib/casebook/newestFirst";
import { findJobs } from "@/lib/study/jobs/findJobs";
import { fitJobs } from "@/lib/study/jobs/fitJobs";
import { listFamilies } from "@/lib/vocabulary/listFamilies";
import { BuildForm } from "../_components/BuildForm";
import { type BuildQuery, readBuildQuery } from "../_components/buildQuery";
import { Hindered } from "../_components/Hindered";

export const metadata: Metadata = { title: "Build a lesson" };

type Props = Readonly<{ searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>> }>;

/** A teacher puts a lesson together, or changes one: title, word of introduction, jobs in an order. */
export default async function BuildLessonPage({ searchParams }: Props) {
  const query = openQuery(readBuildQuery(await searchParams));
  const { bench, casebook, vocabulary } = await getShop();
  const fit = fitJobs(bench.cases.values(), vocabulary);
  return (
    <main className="page" id="main">
      <p>
        <Link href="/study">Study</Link>
      </p>
      <h1>{query.lesson === null ? "Build a lesson" : "Change a lesson"}</h1>
      {query.tried ? <Hindered query={query} hindered={await whatHinders(query)} /> : null}
      <BuildForm
        query={query}
        chosen={query.cases.map((id) => ({ id, kase: bench.cases.get(id) }))}
        found={findJobs(newestFirst(casebook), query, vocabulary)}
        families={listFamilies(vocabulary).filter(({ id }) => fit.has(id))}
        vocabulary={vocabulary}
      />
    </main>
  );
}

/** A lesson that is to be changed comes from its file, until something of it stands in the address. */
function openQuery(query: BuildQuery): BuildQuery {
  const lesson = lessonOf(query.lesson);
  if (!lesson) return { ...query, lesson: null };
  if (query.base !== "") return query;
  const { id, title, by = "", introduction, cases } = lesson;
  return { ...query, base: hashOfLesson(id), title, by, introduction, cases };
}
