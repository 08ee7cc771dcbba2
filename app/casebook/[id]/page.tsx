import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import controls from "@/app/_components/controls.module.css";
import { formatDay } from "@/app/_components/formatDay";
import job from "@/app/_components/JobPage.module.css";
import { LessonMark } from "@/app/_components/LessonMark";
import { LikeCase } from "@/app/_components/LikeCase";
import { labelOf } from "@/app/_components/labelOf";
import { outcomeWord } from "@/app/_components/outcomeWord";
import { Photos } from "@/app/_components/Photos";
import { readUnit } from "@/app/_components/readUnit";
import { Section } from "@/app/_components/Section";
import { Story } from "@/app/_components/Story";
import { stepViews } from "@/app/_components/stepViews";
import { getShop } from "@/app/_data/shop";
import { Gauged } from "@/app/_gauges/Gauged";
import { lessonStandings } from "@/lib/casebook/lessonStandings";
import { lookBack } from "@/lib/consult/record/lookBack";
import { lengthWords } from "@/lib/gauging/lengths/lengthWords";
import { cheaperWay } from "@/lib/study/review/cheaperWay";
import { AgainstNote } from "./_components/AgainstNote";
import { Causes } from "./_components/Causes";
import { CheaperPath } from "./_components/CheaperPath";
import { Harms } from "./_components/Harms";
import { LessonStandingNote } from "./_components/LessonStandingNote";
import { LookedLike } from "./_components/LookedLike";
import { Money } from "./_components/Money";
import { Path } from "./_components/Path";
import { SavedNote } from "./_components/SavedNote";
import { WasDone } from "./_components/WasDone";
import styles from "./page.module.css";

type Props = Readonly<{
  params: Promise<{ id: string }>;
  searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}>;

/** As many like cases as stand side by side. */
const shownLike = 3;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { casebook } = await getShop();
  return { title: casebook.cases.get((await params).id)?.title ?? "Not here" };
}

/** One case: its lesson first, then the path with how belief moved, and what it came to. */
export default async function CasePage({ params, searchParams }: Props) {
  const { casebook, bench, vocabulary } = await getShop();
  const kase = casebook.cases.get((await params).id);
  if (!kase) notFound();
  const { belief, similar } = lookBack(kase, bench);
  const cheaper = cheaperWay(kase, bench);
  const unit = await readUnit();
  const steps = stepViews(kase, vocabulary, lengthWords(unit));
  const root = kase.causes.find(({ role }) => role === "root")?.cause;
  return (
    <main className="page" id="main">
      {(await searchParams).saved === undefined ? null : <SavedNote id={kase.id} file={kase.file} />}
      <header className={job.head}>
        <p className={job.job}>
          <b>Case {kase.id}</b>
          <span>
            {[
              labelOf(vocabulary.instruments, kase.instrument),
              [kase.maker, kase.model].filter(Boolean).join(" "),
            ]
              .filter(Boolean)
              .join(" · ")}
          </span>
          <span>
            Taken in {formatDay(kase.received)}
            {kase.closed ? `, closed ${formatDay(kase.closed)}` : ""}
          </span>
          <span>{outcomeWord(kase.status === "open" ? "open" : (kase.outcome ?? "open"))}</span>
          {kase.demo ? <span>Demo case, invented</span> : null}
        </p>
        <h1>{kase.title}</h1>
        <p className={`${job.tools} unprinted`}>
          <Link className={controls.plain} href={`/casebook/${kase.id}/report`} prefetch={false}>
            Customer report
          </Link>
          <Link className={controls.plain} href={`/casebook/${kase.id}/job-sheet`} prefetch={false}>
            Job sheet
          </Link>
        </p>
      </header>
      {kase.lessons.map((lesson) => (
        <LessonMark key={lesson}>{lesson}</LessonMark>
      ))}
      <LessonStandingNote standing={lessonStandings(casebook.cases.values()).get(kase.id)} />
      <div className={job.came}>
        <p>
          <b>Came in with</b> {kase.complaint}
        </p>
        {kase.arrival.length > 0 ? (
          <p>
            <b>On arrival</b> {kase.arrival.join("; ")}
          </p>
        ) : null}
        {kase.photos ? <Photos id={kase.id} photos={kase.photos} /> : null}
      </div>
      <div className={job.two}>
        <div className={`${job.path} ${styles.path}`}>
          <Path
            steps={steps}
            belief={belief}
            labels={belief.causes.map((cause) => labelOf(vocabulary.causes, cause))}
            hasRoot={root !== undefined && belief.causes[0] === root}
          />
          {cheaper ? <CheaperPath way={cheaper} vocabulary={vocabulary} /> : null}
        </div>
        <div className={styles.aside}>
          <Causes kase={kase} vocabulary={vocabulary} />
          <Money kase={kase} />
          <WasDone steps={steps} />
          <Harms harms={kase.harms} vocabulary={vocabulary} />
          <AgainstNote kase={kase} vocabulary={vocabulary} />
          <LookedLike like={kase.like} cases={casebook.cases} />
        </div>
      </div>
      <Gauged kase={kase} reader={bench.reader} unit={unit} />
      {kase.story ? (
        <Section title="The story">
          <Story markdown={kase.story} />
        </Section>
      ) : null}
      <Section title="Like this one" className="unprinted">
        {similar.length === 0 ? <p className="small soft">No other case is like it.</p> : null}
        <div className={job.like}>
          {similar.slice(0, shownLike).map((like) => (
            <LikeCase key={like.case} like={like} />
          ))}
        </div>
      </Section>
    </main>
  );
}
