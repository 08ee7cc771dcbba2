import type { Metadata } from "next";
import Link from "next/link";
import { gaugeReadings } from "@/lib/consult/gauge/gaugeReadings";
import { lengthWords } from "@/lib/gauging/lengthWords";
import { readSize } from "@/lib/gauging/readSize";
import { benchHref } from "../_bench/benchHref";
import { readBenchQuery, type SearchParams } from "../_bench/benchQuery";
import { SwapVerdict } from "../_bench/SwapVerdict";
import controls from "../_components/controls.module.css";
import { Section } from "../_components/Section";
import { StateNote } from "../_components/StateNote";
import { getShop } from "../_data/shop";
import { BorePart } from "./_components/BorePart";
import { readGaugesFields, unitOf } from "./_components/gaugesFields";
import { gaugesInput, swapsOf } from "./_components/gaugesInput";
import { LiveForm } from "./_components/LiveForm";
import part from "./_components/Part.module.css";
import { PlugsPart } from "./_components/PlugsPart";
import { Questions } from "./_components/Questions";
import { questionsOf } from "./_components/questionsOf";
import { SwapFields } from "./_components/SwapFields";
import { SwapHowFields } from "./_components/SwapHowFields";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Gauges" };

type Props = Readonly<{ searchParams: Promise<SearchParams> }>;

const units = [
  { value: "in", label: "inch", shows: "inch" },
  { value: "mm", label: "mm", shows: "mm" },
] as const;

/** Gauges: plugs, piston, bore and swaps of one valve, drawn and said in words; all of it in the address. */
export default async function GaugesPage({ searchParams }: Props) {
  const fields = readGaugesFields(await searchParams);
  const { bench, vocabulary } = await getShop();
  const input = gaugesInput(fields);
  const answer = gaugeReadings(input, bench.reader);
  const lengths = lengthWords(unitOf(fields));
  const diameter = input.gauges[0]?.piston?.diameter;
  const piston = diameter === undefined ? undefined : readSize(diameter, "diameter");
  const swaps = swapsOf(fields);
  const found = answer.findings.filter(({ check }) => vocabulary.checks.get(check)?.reads !== "swap");
  return (
    <main className="page" id="main">
      <LiveForm action="/gauges">
        <div className={styles.top}>
          <h1>Gauges</h1>
          <div className={styles.tools}>
            {/* Stands first, so that Enter in a field reads the form and does not switch the unit. */}
            <noscript>
              <button type="submit" className={controls.lead}>
                Read
              </button>
            </noscript>
            <input type="hidden" name="unit" value={unitOf(fields) === "mm" ? "mm" : "in"} />
            <span className={controls.either} role="group" aria-label="Write and show lengths in">
              {units.map(({ value, label, shows }) => (
                <button
                  key={value}
                  type="submit"
                  name="show"
                  value={value}
                  aria-pressed={unitOf(fields) === shows}
                >
                  {label}
                </button>
              ))}
            </span>
            <a href="/gauges" className={controls.word}>
              Clear
            </a>
          </div>
        </div>
        <Questions questions={questionsOf(fields)} />
        <PlugsPart fields={fields} gauge={input.gauges[0]} lengths={lengths} />
        <BorePart
          fields={fields}
          diameters={input.diameters}
          pistonMm={piston?.kind === "length" ? piston.mm : undefined}
          lengths={lengths}
        />
        <Section title="Swaps" aside="Oil both alike. Never force a piston into another's casing.">
          <div className={part.halves}>
            <div>
              <SwapFields fields={fields} swaps={answer.swaps} />
              <SwapHowFields fields={fields} vocabulary={vocabulary} />
            </div>
            <div>
              {answer.swaps ? (
                <SwapVerdict swap={answer.swaps} vocabulary={vocabulary} />
              ) : (
                <StateNote title="No swap yet">
                  <p>Choose how each piston ran in each casing: free, drags or sticks.</p>
                </StateNote>
              )}
            </div>
          </div>
        </Section>
      </LiveForm>
      {found.length + swaps.length > 0 ? (
        <div className={styles.onward}>
          <p>
            These readings say:{" "}
            {[
              ...found.map(
                ({ check, outcome, part: on }) =>
                  `${on}: ${vocabulary.checks.get(check)?.outcomes.find(({ id }) => id === outcome)?.label ?? outcome}`,
              ),
              ...(swaps.length > 0 ? [`${swaps.length} ${swaps.length === 1 ? "swap" : "swaps"}`] : []),
            ]
              .join("; ")
              .toLowerCase()}
            .
          </p>
          <Link
            className={controls.lead}
            prefetch={false}
            href={benchHref({ ...readBenchQuery({}), findings: found, swaps })}
          >
            Take them to the bench
          </Link>
        </div>
      ) : null}
    </main>
  );
}
