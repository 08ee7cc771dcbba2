import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { HarmRate } from "@/app/_components/HarmRate";
import { labelOf } from "@/app/_components/labelOf";
import { RiskMark } from "@/app/_components/RiskMark";
import { Section } from "@/app/_components/Section";
import { getShop } from "@/app/_data/shop";
import { repairMinutes } from "@/lib/consult/repairs/repairMinutes";
import { repairResults } from "@/lib/consult/repairs/repairResults";
import { jeffreysInterval } from "@/lib/estimate/jeffreysInterval";
import { lowerFirst } from "@/lib/text/lowerFirst";
import { Bearing } from "../../_components/Bearing";
import { Cautions } from "../../_components/Cautions";
import { casesWith } from "../../_components/casesWith";
import styles from "../../_components/Entry.module.css";
import { EntryHead } from "../../_components/EntryHead";

type Props = Readonly<{ params: Promise<{ id: string }> }>;

const resultWords = {
  fixed: "fixed it",
  better: "made it better",
  "no-change": "changed nothing",
  harm: "did harm",
} as const;

export async function generateMetadata({ params }: Props): Promise<Metadata> {
  const { vocabulary } = await getShop();
  return { title: labelOf(vocabulary.repairs, (await params).id) };
}

/** A repair: what it takes and risks, what to look at before it, how it goes wrong, and how it went in past cases. */
export default async function RepairPage({ params }: Props) {
  const { vocabulary, casebook } = await getShop();
  const repair = vocabulary.repairs.get((await params).id);
  if (!repair) notFound();
  const cases = casesWith(casebook, { repair: repair.id }, vocabulary);
  const tried = cases.map((kase) => ({ kase, ...repairResults(kase, repair.id) }));
  const fixed = tried.filter(({ last }) => last === "fixed").length;
  const harmed = tried.filter(({ didHarm }) => didHarm).length;
  const rate = jeffreysInterval(harmed, cases.length);
  const took = repairMinutes(cases, repair.id);
  const { low, usual, high } = repair.minutes;
  const outcome = (check: string, id: string) =>
    vocabulary.checks.get(check)?.outcomes.find((one) => one.id === id)?.label ?? id;
  return (
    <main className="page" id="main">
      <EntryHead kind="Repair" anchor="repairs" title={repair.label} synonyms={repair.synonyms}>
        <RiskMark riskClass={repair.risk} />
        <span>
          usually {formatMinutes(usual)}, from {formatMinutes(low)} to {formatMinutes(high)}
        </span>
        <span className="soft">
          {repair.families.map((family) => labelOf(vocabulary.instruments, family)).join(", ")}
        </span>
      </EntryHead>
      <div className={styles.two}>
        <div>
          {repair.checkFirst.length > 0 ? (
            <Section title="Check first">
              <ul className={styles.list}>
                {repair.checkFirst.map(({ check, why }) => (
                  <li key={check}>
                    <Link href={`/handbook/checks/${check}`} prefetch={false}>
                      {labelOf(vocabulary.checks, check)}
                    </Link>
                    <p className={styles.why}>{why}</p>
                  </li>
                ))}
              </ul>
            </Section>
          ) : null}
          <Cautions ids={repair.cautions} vocabulary={vocabulary} />
          <Section title="How it is done">
            <p className={styles.prose}>{repair.how}</p>
          </Section>
          <Section title="How it goes wrong">
            <ul className={styles.wrong}>
              {repair.goesWrong.map((words) => (
                <li key={words}>{words}</li>
              ))}
            </ul>
          </Section>
          <Section title="What proves it">
            <ul className={styles.proof}>
              {repair.proof.map(({ check, outcome: id }) => (
                <li key={`${check} ${id}`}>
                  <Link href={`/handbook/checks/${check}`} prefetch={false}>
                    {labelOf(vocabulary.checks, check)}
                  </Link>
                  : {lowerFirst(outcome(check, id))}
                </li>
              ))}
            </ul>
          </Section>
          <p className={styles.source}>Source: {repair.source}.</p>
        </div>
        <div>
          <Section title="How it went here">
            {cases.length > 0 ? (
              <p>
                <b>
                  Fixed it in {fixed} of {cases.length} {cases.length === 1 ? "case" : "cases"}
                </b>
              </p>
            ) : null}
            <p>
              <HarmRate harmed={harmed} done={cases.length} />
            </p>
            {cases.length > 0 ? (
              <p className="small soft">
                In a hundred such jobs expect harm in {Math.round(100 * rate.low)} to{" "}
                {Math.round(100 * rate.high)}: this range holds 19 times in 20.
              </p>
            ) : null}
            {took ? (
              <p>
                Took {formatMinutes(took.p50)} or less in half of {took.cases}{" "}
                {took.cases === 1 ? "job" : "jobs"}, {formatMinutes(took.p80)} or less in four of five; the
                handbook says usually {formatMinutes(usual)}.
              </p>
            ) : null}
          </Section>
          <Bearing
            title="Cases in which it was done"
            cases={cases}
            all={{ repair: repair.id }}
            vocabulary={vocabulary}
            say={(kase) => {
              const { last, didHarm } = repairResults(kase, repair.id);
              return [last ? resultWords[last] : "", didHarm && last !== "harm" ? "did harm on the way" : ""]
                .filter(Boolean)
                .join(", ");
            }}
            none="It has not been done in a case here yet."
          />
        </div>
      </div>
    </main>
  );
}
