import type { Metadata } from "next";
import { StateNote } from "@/app/_components/StateNote";
import { currentLearner } from "@/app/_data/currentLearner";
import { lessonOf, lessonShelf } from "@/app/_data/lessonShelf";
import { getShop } from "@/app/_data/shop";
import { lengthWords } from "@/lib/gauging/lengths/lengthWords";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import { readUnit } from "../_components/readUnit";
import { Session } from "./_components/Session";
import { Start } from "./_components/Start";
import { readStudyQuery, type SearchParams } from "./_components/studyQuery";

export const metadata: Metadata = { title: "Study" };

/** Study: a past job to work through, one check at a time. The whole session stands in the address. */
export default async function StudyPage({ searchParams }: Readonly<{ searchParams: Promise<SearchParams> }>) {
  const query = readStudyQuery(await searchParams);
  const { bench } = await getShop();
  const { learner, isLost } = await currentLearner();
  const kase = query.case === null ? undefined : bench.cases.get(query.case);
  return (
    <main className="page" id="main">
      {kase && isFitForStudy(kase) ? (
        <Session
          kase={kase}
          query={query}
          bench={bench}
          learner={learner}
          lesson={lessonOf(query.lesson)}
          lengths={lengthWords(await readUnit())}
        />
      ) : query.case === null ? (
        <Start
          query={query}
          bench={bench}
          learner={learner}
          isLost={isLost}
          lessons={lessonShelf().all().entries}
        />
      ) : (
        <NoSuchCase />
      )}
    </main>
  );
}

function NoSuchCase() {
  return (
    <>
      <h1>Study</h1>
      <StateNote title="There is no such job to work through" tone="warn" level={2}>
        <p>
          The address names a case that the casebook does not have, or in which too little was checked.{" "}
          <a href="/study">Pick another</a>.
        </p>
      </StateNote>
    </>
  );
}
