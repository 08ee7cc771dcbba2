import type { Metadata } from "next";
import Link from "next/link";
import { gaugeReadings } from "@/lib/consult/gauge/gaugeReadings";
import { benchHref } from "../_bench/benchHref";
import { readBenchQuery, type SearchParams } from "../_bench/benchQuery";
import controls from "../_components/controls.module.css";
import { readUnit } from "../_components/readUnit";
import { UnitSwitch } from "../_components/UnitSwitch";
import { getShop } from "../_data/shop";
import { foundWords } from "../_gauges/foundWords";
import { GaugesForm } from "../_gauges/GaugesForm";
import { gaugesHref, readGaugesFields } from "../_gauges/gaugesFields";
import { gaugesInput, swapsOf } from "../_gauges/gaugesInput";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Gauges" };

type Props = Readonly<{ searchParams: Promise<SearchParams> }>;

/** As many jobs in hand as are offered, the one taken in last first. */
const shownJobs = 8;

/** Gauges: plugs, piston, bore and swaps of one valve, drawn and said in words; all of it in the address. */
export default async function GaugesPage({ searchParams }: Props) {
  const params = await searchParams;
  const unit = await readUnit(params.unit === "mm" ? "mm" : "inch");
  const fields = readGaugesFields(params, unit);
  const { bench, vocabulary } = await getShop();
  const input = gaugesInput(fields);
  const answer = gaugeReadings(input, bench.reader);
  const swaps = swapsOf(fields);
  const found = answer.findings.filter(({ check }) => vocabulary.checks.get(check)?.reads !== "swap");
  const said = foundWords(found, swaps.length, vocabulary);
  const jobs = [...bench.open.values()].sort((a, b) => (a.received < b.received ? 1 : -1));
  return (
    <main className="page" id="main">
      <div className={styles.top}>
        <h1>Gauges</h1>
        <div className={styles.tools}>
          <UnitSwitch unit={unit} />
          <a href="/gauges" className={controls.word}>
            Clear
          </a>
        </div>
      </div>
      <GaugesForm path="/gauges" fields={fields} input={input} answer={answer} vocabulary={vocabulary} />
      {said === "" ? null : (
        <div className={styles.onward}>
          <p>These readings say: {said}.</p>
          <Link
            className={controls.lead}
            prefetch={false}
            href={benchHref({ ...readBenchQuery({}), findings: found, swaps })}
          >
            Take them to the bench
          </Link>
        </div>
      )}
      {input.gauges.length + input.diameters.length + swaps.length > 0 && jobs.length > 0 ? (
        <details>
          <summary className={controls.opens}>Take them to a job in hand</summary>
          <ul>
            {jobs.slice(0, shownJobs).map(({ id, title }) => (
              <li key={id}>
                <Link
                  className={controls.link}
                  href={gaugesHref(fields, `/sheets/${id}/gauges`)}
                  prefetch={false}
                >
                  {id}: {title}
                </Link>
              </li>
            ))}
          </ul>
        </details>
      ) : null}
    </main>
  );
}
