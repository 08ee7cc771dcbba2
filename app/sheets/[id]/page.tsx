import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { Likely } from "@/app/_bench/Likely";
import { NotYet } from "@/app/_bench/NotYet";
import controls from "@/app/_components/controls.module.css";
import { formatDay } from "@/app/_components/formatDay";
import jobPage from "@/app/_components/JobPage.module.css";
import { labelOf } from "@/app/_components/labelOf";
import { readUnit } from "@/app/_components/readUnit";
import { StateNote } from "@/app/_components/StateNote";
import { stepViews } from "@/app/_components/stepViews";
import { getSheet } from "@/app/_data/getSheet";
import { getSettings } from "@/app/_data/settings";
import { getShop } from "@/app/_data/shop";
import { Gauged } from "@/app/_gauges/Gauged";
import { Harms } from "@/app/casebook/[id]/_components/Harms";
import { Path } from "@/app/casebook/[id]/_components/Path";
import { readRevision } from "@/lib/casebook/keeping/readRevision";
import { findTakenOff } from "@/lib/casebook/photos/findTakenOff";
import { likeCases } from "@/lib/consult/likeCases";
import { estimateJob } from "@/lib/consult/quote/estimateJob";
import { repairsInView } from "@/lib/consult/quote/repairsInView";
import { beliefAlongPath } from "@/lib/consult/record/beliefAlongPath";
import { consultSheet } from "@/lib/consult/sheet/consultSheet";
import { jobInView } from "@/lib/consult/similarCases";
import { formatProblem } from "@/lib/document/contentProblem";
import { lengthWords } from "@/lib/gauging/lengths/lengthWords";
import { SheetForm } from "../_components/SheetForm";
import { DoneNote } from "./_components/DoneNote";
import { EditSheet } from "./_components/EditSheet";
import { LikeBefore } from "./_components/LikeBefore";
import { LogNext } from "./_components/LogNext";
import { MendMinutes } from "./_components/MendMinutes";
import { PhotosPart } from "./_components/PhotosPart";
import { PlanPart } from "./_components/PlanPart";
import { ProofList } from "./_components/ProofList";
import { QuotePart } from "./_components/QuotePart";
import { partChoices } from "./_components/sheetChoices";
import { Versions } from "./_components/Versions";
import styles from "./page.module.css";

type Props = Readonly<{
  params: Promise<{ id: string }>;
  searchParams: Promise<Readonly<Record<string, string | string[] | undefined>>>;
}>;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { casebook } = await getShop();
  return { title: casebook.cases.get((await params).id)?.title ?? "Sheet" };
}

/** One job in hand: what came in, what was done so far, what to do next; every tap is on disk before the page comes back. */
export default async function SheetPage({ params, searchParams }: Props) {
  const asOnDisk = await getSheet((await params).id);
  if (!asOnDisk) notFound();
  const { kase, kept, place, problems, revisions } = asOnDisk;
  const { done, what, version, photo } = await searchParams;
  const { bench, vocabulary, casebook } = await getShop();
  const sheet = { id: place.id, text: kept.text, hash: kept.hash };
  const number = Number(version);
  const looked = Number.isSafeInteger(number) ? readRevision(place, number) : undefined;
  const versions = (
    <Versions
      sheet={sheet}
      revisions={revisions}
      looked={looked === undefined ? undefined : { number, text: looked }}
    />
  );
  if (!kase) {
    return (
      <main className="page" id="main">
        <h1>Sheet {place.id}</h1>
        <StateNote
          level={2}
          tone="fail"
          title={kept.hash === "" ? "Its file is gone." : "Its file cannot be read as it stands now."}
        >
          {problems.slice(0, 5).map((problem) => (
            <p key={formatProblem(problem)}>{formatProblem(problem)}</p>
          ))}
          <p>Mend the file, or put one of the kept versions back. Nothing that was kept here is lost.</p>
        </StateNote>
        {versions}
      </main>
    );
  }
  if (kase.status === "closed") {
    return (
      <main className="page" id="main">
        <h1>{kase.title}</h1>
        <StateNote level={2} title="This job is closed.">
          <p>
            It stands in the casebook as <Link href={`/casebook/${kase.id}`}>case {kase.id}</Link>. To open it
            again, put back a version from before it was closed.
          </p>
        </StateNote>
        {versions}
      </main>
    );
  }
  const asked = typeof photo === "string" && !kase.photos?.some(({ file }) => file === photo) ? photo : "";
  const takenOff = asked === "" ? undefined : findTakenOff(place, revisions, asked);
  const answer = consultSheet(kase, bench);
  const belief = beliefAlongPath(kase, bench);
  const unit = await readUnit();
  const steps = stepViews(kase, vocabulary, lengthWords(unit));
  const found = likeCases(kase, bench);
  const job = jobInView(kase.instrument, found);
  const estimate = estimateJob(kase, found, repairsInView(kase, answer, vocabulary), bench);
  const { settings } = await getSettings();
  const planned = new Set(kase.plan?.map(({ repair }) => repair));
  return (
    <main className="page" id="main">
      <header className={jobPage.head}>
        <p className={jobPage.job}>
          <b>Sheet {kase.id}</b>
          <span>
            {[
              labelOf(vocabulary.instruments, kase.instrument),
              [kase.maker, kase.model].filter(Boolean).join(" "),
            ]
              .filter(Boolean)
              .join(" · ")}
          </span>
          <span>Taken in {formatDay(kase.received)}</span>
        </p>
        <h1>{kase.title}</h1>
        <p className={`${jobPage.tools} unprinted`}>
          <Link className={controls.lead} href={`/sheets/${kase.id}/close`} prefetch={false}>
            Close the job
          </Link>
          <Link className={controls.plain} href={`/sheets/${kase.id}/gauges`} prefetch={false}>
            Gauges
          </Link>
          <Link className={controls.plain} href={`/sheets/${kase.id}/job-sheet`} prefetch={false}>
            Job sheet
          </Link>
          <Link className={controls.plain} href={`/sheets/${kase.id}/report`} prefetch={false}>
            Customer report
          </Link>
        </p>
      </header>
      <DoneNote done={done} sheet={sheet} hasSteps={kase.path.length > 0} takenOff={takenOff} />
      <datalist id="parts">
        {partChoices(vocabulary, kase.instrument).map((part) => (
          <option key={part} value={part} />
        ))}
      </datalist>
      <div className={jobPage.came}>
        <p>
          <b>Came in with</b> {kase.complaint}
        </p>
        <p>
          <b>On arrival</b> {kase.arrival.length > 0 ? kase.arrival.join("; ") : "nothing noted yet"}
        </p>
        <EditSheet sheet={sheet} kase={kase} vocabulary={vocabulary} />
        <PhotosPart sheet={sheet} kase={kase} />
      </div>
      <div className={jobPage.two}>
        <div>
          <LogNext
            sheet={sheet}
            kase={kase}
            answer={answer}
            job={job}
            bench={bench}
            what={typeof what === "string" ? what : ""}
          />
          <PlanPart sheet={sheet} kase={kase} answer={answer} job={job} bench={bench} />
          <div className={`${jobPage.path} ${styles.path}`}>
            <Path
              steps={steps}
              belief={belief}
              labels={belief.causes.map((cause) => labelOf(vocabulary.causes, cause))}
              hasRoot={false}
            />
            {kase.path.length > 0 ? (
              <div className={`${styles.undo} unprinted`}>
                <SheetForm sheet={sheet} wish="undo" name="undo">
                  <button type="submit" className={controls.plain}>
                    Take back the last step
                  </button>
                </SheetForm>
                <MendMinutes sheet={sheet} steps={steps} />
              </div>
            ) : null}
          </div>
        </div>
        <aside aria-label="What it looks like">
          <QuotePart sheet={sheet} kase={kase} estimate={estimate} settings={settings} />
          <ProofList kase={kase} vocabulary={vocabulary} />
          <Harms harms={kase.harms} vocabulary={vocabulary} />
          <Likely answer={answer} titles={casebook.cases} caseCount={bench.cases.size} />
          <NotYet warnings={answer.warnings.filter(({ repair }) => !planned.has(repair))} />
        </aside>
      </div>
      <Gauged kase={kase} reader={bench.reader} unit={unit} />
      <LikeBefore sheet={sheet} similar={answer.similar} cases={casebook.cases} />
      {versions}
    </main>
  );
}
