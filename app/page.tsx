import Link from "next/link";
import { AnswerInShort } from "./_bench/AnswerInShort";
import styles from "./_bench/Bench.module.css";
import { BenchAnswer } from "./_bench/BenchAnswer";
import { BenchLink } from "./_bench/BenchLink";
import { benchFields, benchHref } from "./_bench/benchHref";
import { asksForPlan, longestSays, readBenchQuery, type SearchParams } from "./_bench/benchQuery";
import { Findings } from "./_bench/Findings";
import { instrumentOptions } from "./_bench/instrumentOptions";
import { KeepAsSheet } from "./_bench/KeepAsSheet";
import { LikeItBefore } from "./_bench/LikeItBefore";
import { marksOf } from "./_bench/marksOf";
import { NothingYet } from "./_bench/NothingYet";
import { pistonView } from "./_bench/pistonView";
import { isBare, problemOf } from "./_bench/problemOf";
import { SaysForm } from "./_bench/SaysForm";
import { SetAside } from "./_bench/SetAside";
import { Strip } from "./_bench/Strip";
import { SwapGrid } from "./_bench/SwapGrid";
import { ValveSection } from "./_bench/ValveSection";
import controls from "./_components/controls.module.css";
import { getShop } from "./_data/shop";

type Props = Readonly<{ searchParams: Promise<SearchParams> }>;

/** The bench: what came in on the one side, what it looks like on the other; all of it in the address. */
export default async function BenchPage({ searchParams }: Props) {
  const params = await searchParams;
  const bench = readBenchQuery(params);
  const shop = await getShop();
  const { vocabulary, casebook } = shop;
  const answer = isBare(bench) ? undefined : shop.consult(problemOf(bench), { plan: asksForPlan(params) });
  const instrument = bench.instrument ?? answer?.instrument?.id;
  const view = answer?.instrument?.outside ? undefined : pistonView(vocabulary, instrument, answer);
  return (
    <main className="page" id="main">
      <SetAside count={shop.problems.length} />
      <AnswerInShort answer={answer} />
      <div className={styles.bench}>
        <div className={styles.evidence}>
          <SaysForm
            says={bench.says}
            instrument={bench.instrument ?? ""}
            heardInstrument={answer?.instrument?.label ?? null}
            groups={instrumentOptions(vocabulary)}
            marks={answer ? marksOf(bench.says, answer) : []}
            carried={benchFields(bench)}
            longest={longestSays}
          />
          {answer ? <Findings bench={bench} answer={answer} vocabulary={vocabulary} /> : null}
          {view ? (
            <div className={styles.drawings}>
              <ValveSection
                bench={bench}
                understood={answer?.understood ?? []}
                vocabulary={vocabulary}
                view={view}
              />
              <SwapGrid
                bench={bench}
                view={view}
                swap={answer?.swap ?? null}
                understood={answer?.understood ?? []}
                vocabulary={vocabulary}
              />
            </div>
          ) : null}
          {answer ? (
            <div className={`${styles.after} unprinted`}>
              <KeepAsSheet fields={[...new URLSearchParams(benchHref(bench, "")).entries()]} />
              <Link className={controls.plain} href={benchHref(bench, "/add")} prefetch={false}>
                Write it up as a case
              </Link>
              <BenchLink ownWords className={controls.word} to={readBenchQuery({})}>
                Clear the bench
              </BenchLink>
            </div>
          ) : null}
        </div>
        {answer ? (
          <>
            <BenchAnswer
              answer={answer}
              bench={bench}
              titles={casebook.cases}
              caseCount={shop.bench.cases.size}
            />
            <div className={styles.alike}>
              {answer.understood.length > 0 && !answer.instrument?.outside ? (
                <LikeItBefore similar={answer.similar} />
              ) : null}
            </div>
          </>
        ) : (
          <div className={styles.start}>
            <NothingYet caseCount={shop.bench.cases.size} bench={bench} />
          </div>
        )}
      </div>
      {answer ? <Strip answer={answer} /> : null}
    </main>
  );
}
