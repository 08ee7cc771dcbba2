import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import type { LengthWords } from "@/lib/gauging/lengthWords";
import { plugReport } from "@/lib/gauging/plugReport";
import { plugWords } from "@/lib/gauging/plugWords";
import { readSize } from "@/lib/gauging/readSize";
import { Section } from "../../_components/Section";
import { StateNote } from "../../_components/StateNote";
import { ClearanceBar } from "./ClearanceBar";
import styles from "./Fields.module.css";
import { type GaugesFields, unitOf } from "./gaugesFields";
import { LengthField } from "./LengthField";
import { Numbers } from "./Numbers";
import { plugRows } from "./numberRows";
import part from "./Part.module.css";
import { PlugLadder } from "./PlugLadder";

type Gauge = ReadingsInput["gauges"][number];
type Props = Readonly<{ fields: GaugesFields; gauge: Gauge | undefined; lengths: LengthWords }>;

/** Plugs in a casing and its sibling, and the piston: fields on the one side, the ladder and what it means on the other. */
export function PlugsPart({ fields, gauge, lengths }: Props) {
  const such = unitOf(fields) === "mm" ? ["16,98 17,00", "17,04"] : [".668 .669", ".671"];
  return (
    <Section title="Plugs and piston" aside="To one depth, from one end. Several plugs: a space between.">
      <div className={part.halves}>
        <div>
          <fieldset className={styles.set}>
            <legend>The bore in trouble</legend>
            <div className={styles.pair}>
              <LengthField name="part" label="Which" fields={fields} such="casing 2" words />
              <LengthField name="depth" label="Depth" fields={fields} />
              <LengthField name="passes" label="Plugs that pass" fields={fields} such={such[0]} />
              <LengthField name="stops" label="Plugs that stop" fields={fields} such={such[1]} />
            </div>
          </fieldset>
          <fieldset className={styles.set}>
            <legend>A sound sibling, same depth</legend>
            <div className={styles.pair}>
              <LengthField name="sib" label="Which" fields={fields} such="casing 1" words />
              <LengthField name="spasses" label="Plugs that pass" fields={fields} />
              <LengthField name="sstops" label="Plugs that stop" fields={fields} />
            </div>
          </fieldset>
          <fieldset className={styles.set}>
            <legend>Its piston, by micrometer, where it is largest</legend>
            <div className={styles.pair}>
              <LengthField name="piston" label="Diameter" fields={fields} />
              <LengthField name="pm" label="Give or take" fields={fields} />
            </div>
          </fieldset>
        </div>
        <div>
          {gauge ? (
            <PlugsMean fields={fields} gauge={gauge} lengths={lengths} />
          ) : (
            <StateNote title="No plug yet">
              <p>Write the largest that passes and the smallest that stops; the bore lies between the two.</p>
            </StateNote>
          )}
        </div>
      </div>
    </Section>
  );
}

function PlugsMean({
  fields,
  gauge,
  lengths,
}: Readonly<{ fields: GaugesFields; gauge: Gauge; lengths: LengthWords }>) {
  const report = plugReport(gauge);
  const names = { bore: gauge.part, reference: gauge.reference?.part ?? "its sibling" };
  const words = plugWords(report, names, lengths);
  const sizes = (texts: readonly string[] = []) =>
    texts.flatMap((text) => {
      const read = readSize(text, "diameter");
      return read.kind === "length" ? [read.mm] : [];
    });
  const { bore, reference, clearance, reduction } = report;
  const means = [reduction ? words.reduction : words.size, words.clearance, words.fit, words.leak];
  return (
    <>
      {[bore, ...(reference ? [reference] : [])].flatMap(({ contradictions }) =>
        contradictions.map(({ passedMm, stoppedMm }) => (
          <StateNote key={`${passedMm} ${stoppedMm}`} title="Two readings cannot both be right" tone="fail">
            <p>
              {lengths.size(passedMm)} passed, yet {lengths.size(stoppedMm)} stopped. Neither counts until one
              is taken again. Wipe plug and bore first.
            </p>
          </StateNote>
        )),
      )}
      <PlugLadder
        unit={unitOf(fields)}
        lengths={lengths}
        rows={[
          ...(reference
            ? [
                {
                  name: names.reference,
                  bracket: reference,
                  passesMm: sizes(gauge.reference?.passes),
                  stopsMm: sizes(gauge.reference?.stops),
                },
              ]
            : []),
          { name: names.bore, bracket: bore, passesMm: sizes(gauge.passes), stopsMm: sizes(gauge.stops) },
        ]}
      />
      {clearance ? <ClearanceBar clearance={clearance} unit={unitOf(fields)} /> : null}
      <ul className={part.means}>
        {means.map((sentence) => (sentence ? <li key={sentence}>{sentence}</li> : null))}
        {report.flags
          .filter((flag) => /^(no reference|different depths|undecided|too few)/.test(flag))
          .map((flag) => (
            <li key={flag} className={part.flag}>
              {flag.charAt(0).toUpperCase() + flag.slice(1)}.
            </li>
          ))}
      </ul>
      <Numbers caption="The same in figures" rows={plugRows(report)} />
    </>
  );
}
