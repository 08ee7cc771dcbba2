import type { Metadata } from "next";
import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { labelOf } from "@/app/_components/labelOf";
import { StateNote } from "@/app/_components/StateNote";
import { getShop } from "@/app/_data/shop";
import { LessonTried } from "@/app/handbook/_components/LessonTried";
import { lessonStandings } from "@/lib/casebook/lessonStandings";
import { countPatterns } from "@/lib/patterns/countPatterns";
import { monthBefore } from "@/lib/patterns/monthBefore";
import { narrowCasebook } from "@/lib/text/narrowCases";
import { listFamilies } from "@/lib/vocabulary/listFamilies";
import { Filters } from "./_components/Filters";
import { HarmSection } from "./_components/HarmSection";
import { NewsSection } from "./_components/NewsSection";
import { ParetoSection } from "./_components/ParetoSection";
import { casesHref, readPatternsQuery, type SearchParams } from "./_components/patternsQuery";
import { QuoteSection } from "./_components/QuoteSection";
import { ThinSection } from "./_components/ThinSection";

export const metadata: Metadata = { title: "Patterns" };

/** Fewer jobs than this are stories and no rates. Chosen. */
const fewJobs = 20;

/** What the shop's owner sees: what comes in, whether quotes hold, what does harm, what is new, and what is missing. */
export default async function PatternsPage({
  searchParams,
}: Readonly<{ searchParams: Promise<SearchParams> }>) {
  const query = readPatternsQuery(await searchParams);
  const { casebook, vocabulary } = await getShop();
  const { family, year } = query;
  const all = casebook.cases.size;
  const since = monthBefore(new Date().toISOString().slice(0, 10));
  const patterns = countPatterns(casebook, vocabulary, family, year, since);
  const { cases: kept } = patterns;
  const jobs = `${kept.length} ${kept.length === 1 ? "job" : "jobs"}`;
  const chosen = [
    family ? labelOf(vocabulary.instruments, family) : "",
    year ? `taken in ${year}` : "",
  ].filter(Boolean);
  const open = kept.filter(({ status }) => status === "open").length;
  return (
    <main className="page" id="main">
      <h1>Patterns</h1>
      {all === 0 ? (
        <StateNote title="No job yet, so no pattern." level={2}>
          <p>
            What brings instruments in, whether quotes hold and which repairs do harm shows here as soon as
            jobs are written up.
          </p>
          <p className={controls.row}>
            <Link className={controls.lead} href="/add" prefetch={false}>
              Add the first case
            </Link>
          </p>
        </StateNote>
      ) : (
        <>
          <p className="soft">
            <Link href={casesHref(query, {})} prefetch={false}>
              {jobs}
            </Link>
            {chosen.length > 0 ? ` of ${all}: ${chosen.join(", ")}` : " in the casebook"}
            {open > 0 ? `; ${open} still on the bench` : ""}
          </p>
          <Filters
            query={query}
            families={listFamilies(vocabulary).map(({ id, label }) => ({ value: id, label }))}
            years={[...narrowCasebook(casebook, {}, vocabulary).facets.year.keys()]
              .sort()
              .reverse()
              .map((value) => ({ value, label: value }))}
          />
          {kept.length === 0 ? (
            <StateNote title="No job is of this family and year." level={2}>
              <p>
                <Link href="/patterns">Look at every family and year</Link>
              </p>
            </StateNote>
          ) : (
            <>
              {kept.length < fewJobs ? (
                <StateNote title={`Only ${jobs}.`} tone="warn" level={2}>
                  <p>Too few for a pattern: read each as a story, not as a rate.</p>
                </StateNote>
              ) : null}
              <ParetoSection query={query} cases={kept} counts={patterns.counts} vocabulary={vocabulary} />
              <QuoteSection query={query} patterns={patterns} vocabulary={vocabulary} />
              <HarmSection query={query} rates={patterns.harms} vocabulary={vocabulary} />
              <LessonTried
                cases={kept}
                standings={lessonStandings(casebook.cases.values())}
                none="No later job has tried a lesson yet. Whoever closes a sheet is asked whether the lessons of like jobs held."
              />
            </>
          )}
          <NewsSection news={patterns.news} vocabulary={vocabulary} since={since} />
          {kept.length > 0 ? (
            <ThinSection places={patterns.thin} lone={patterns.lone} vocabulary={vocabulary} />
          ) : null}
        </>
      )}
    </main>
  );
}
