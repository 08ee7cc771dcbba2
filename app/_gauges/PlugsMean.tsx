import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import { lengthWords } from "@/lib/gauging/lengths/lengthWords";
import { readSize } from "@/lib/gauging/lengths/readSize";
import { plugReport } from "@/lib/gauging/plugs/plugReport";
import { plugWords } from "@/lib/gauging/plugs/plugWords";
import { upperFirst } from "@/lib/text/upperFirst";
import type { ShownUnit } from "../_components/readUnit";
import { StateNote } from "../_components/StateNote";
import { ClearanceBar } from "./ClearanceBar";
import { Numbers } from "./Numbers";
import { plugRows } from "./numberRows";
import part from "./Part.module.css";
import { PlugLadder } from "./PlugLadder";

type Props = Readonly<{ gauge: ReadingsInput["gauges"][number]; unit: ShownUnit }>;

/** What plugs in one bore come to: the ladder, the clearance, the words and the figures. */
export function PlugsMean({ gauge, unit }: Props) {
  const lengths = lengthWords(unit);
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
        unit={unit}
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
      {clearance ? <ClearanceBar clearance={clearance} unit={unit} /> : null}
      <ul className={part.means}>
        {means.map((sentence) => (sentence ? <li key={sentence}>{sentence}</li> : null))}
        {report.flags
          .filter((flag) => /^(no reference|different depths|undecided|too few)/.test(flag))
          .map((flag) => (
            <li key={flag} className={part.flag}>
              {upperFirst(flag)}.
            </li>
          ))}
      </ul>
      <Numbers caption="The same in figures" rows={plugRows(report)} />
    </>
  );
}
