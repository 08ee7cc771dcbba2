import type { Metadata } from "next";
import Link from "next/link";
import { notFound } from "next/navigation";
import type { SearchParams, TappedSwap } from "@/app/_bench/benchQuery";
import controls from "@/app/_components/controls.module.css";
import job from "@/app/_components/JobPage.module.css";
import { readUnit } from "@/app/_components/readUnit";
import { UnitSwitch } from "@/app/_components/UnitSwitch";
import { getSheet } from "@/app/_data/getSheet";
import { getShop } from "@/app/_data/shop";
import { fieldsOfReadings } from "@/app/_gauges/fieldsOfReadings";
import { foundWords } from "@/app/_gauges/foundWords";
import { GaugesForm } from "@/app/_gauges/GaugesForm";
import { isFilled, readGaugesFields } from "@/app/_gauges/gaugesFields";
import { gaugesInput, swapsOf } from "@/app/_gauges/gaugesInput";
import gauges from "@/app/gauges/page.module.css";
import { SheetForm } from "@/app/sheets/_components/SheetForm";
import fieldStyles from "@/app/sheets/_components/SheetForm.module.css";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { SwapStep } from "@/lib/casebook/step";
import { gaugeReadings } from "@/lib/consult/gauge/gaugeReadings";
import { lastSwaps, readingsOfPath } from "@/lib/consult/gauge/readingsOfPath";
import { likelyPart } from "@/lib/consult/sheet/likelyPart";
import { newReadings } from "@/lib/consult/sheet/newReadings";
import { stepsOfReadings } from "@/lib/consult/sheet/stepsOfReadings";
import styles from "./page.module.css";

export const metadata: Metadata = { title: "Gauges of a job" };

type Props = Readonly<{ params: Promise<{ id: string }>; searchParams: Promise<SearchParams> }>;

/** The gauges at a job in hand: what its path has read by now, more to be read, and the new readings logged. */
export default async function SheetGaugesPage({ params, searchParams }: Props) {
  const found = await getSheet((await params).id);
  if (!found?.kase || found.kase.status === "closed") notFound();
  const { kase, kept, place } = found;
  const { bench, vocabulary } = await getShop();
  const asks = await searchParams;
  const unit = await readUnit(asks.unit === "mm" ? "mm" : "inch");
  const asked = readGaugesFields(asks, unit);
  const bores = [...vocabulary.parts.values()].flatMap(({ swapsInto }) => swapsInto ?? []);
  const part = likelyPart(kase, bores, vocabulary);
  const known = {
    ...(part ? { part } : {}),
    ...fieldsOfReadings({ ...readingsOfPath(kase), swaps: lastSwaps(kase.path).map(tappedStep) }),
  };
  const fields = isFilled(asked) ? asked : { ...known, unit: unit === "mm" ? "mm" : "in" };
  const input = { ...gaugesInput(fields), instrument: kase.instrument };
  const answer = gaugeReadings(input, bench.reader);
  const told = stepsOfReadings(input, bench.reader, kase.instrument);
  const count = "steps" in told ? newReadings(told.steps, kase.path).length : 1;
  const said = foundWords(
    answer.findings.filter(({ check }) => vocabulary.checks.get(check)?.reads !== "swap"),
    swapsOf(fields).length,
    vocabulary,
  );
  return (
    <main className="page" id="main">
      <p className={job.job}>
        <Link className={controls.link} href={`/sheets/${kase.id}`} prefetch={false}>
          Back to sheet {kase.id}
        </Link>
        <span>{kase.title}</span>
      </p>
      <div className={gauges.top}>
        <h1>Gauges of this job</h1>
        <UnitSwitch unit={unit} />
      </div>
      <GaugesForm
        path={`/sheets/${kase.id}/gauges`}
        fields={fields}
        input={input}
        answer={answer}
        vocabulary={vocabulary}
      />
      {count > 0 ? (
        <SheetForm
          sheet={{ id: place.id, text: kept.text, hash: kept.hash }}
          wish="readings"
          name="readings"
          className={styles.log}
        >
          {said === "" ? null : <p>All readings say: {said}.</p>}
          <input type="hidden" name="readings" value={JSON.stringify(input)} />
          <div className={fieldStyles.fields}>
            <TypedField
              name="step.0.minutes"
              label="Minutes"
              blank={kase.clock ? "clock's" : undefined}
              kind="number"
              className={fieldStyles.narrow}
            />
            <TypedField name="step.0.note" label="Note" className={fieldStyles.half} />
          </div>
          <p className={fieldStyles.buttons}>
            <button type="submit" className={controls.lead}>
              Log {count === 1 ? "the new reading" : `the ${count} new readings`}
            </button>
          </p>
        </SheetForm>
      ) : (
        <p className="small soft">Nothing is read here that the path does not have yet.</p>
      )}
    </main>
  );
}

const tappedStep = ({ swap: [guest, host], found, where, way, turned }: SwapStep): TappedSwap => ({
  guest,
  host,
  result: found,
  where: where ?? null,
  way: way ?? null,
  turned: turned ?? null,
});
