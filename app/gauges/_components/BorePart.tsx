import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import { boreMap } from "@/lib/gauging/boreMap";
import { boreWords } from "@/lib/gauging/boreWords";
import type { LengthWords } from "@/lib/gauging/lengthWords";
import { readSize } from "@/lib/gauging/readSize";
import { taperWords } from "@/lib/gauging/taperWords";
import controls from "../../_components/controls.module.css";
import { Section } from "../../_components/Section";
import { StateNote } from "../../_components/StateNote";
import { BoreDrawing } from "./BoreDrawing";
import { boreScale } from "./boreLayout";
import { DownTheBore } from "./DownTheBore";
import styles from "./Fields.module.css";
import {
  angleCountOf,
  angleCounts,
  anglesOf,
  type GaugesFields,
  sectionNumbers,
  unitOf,
} from "./gaugesFields";
import { LengthField } from "./LengthField";
import { Numbers } from "./Numbers";
import { sectionRows } from "./numberRows";
import part from "./Part.module.css";

type Props = Readonly<{
  fields: GaugesFields;
  diameters: ReadingsInput["diameters"];
  pistonMm: number | undefined;
  lengths: LengthWords;
}>;

/** The bore at several angles and depths: fields, then every depth drawn to one exaggerated scale. */
export function BorePart({ fields, diameters, pistonMm, lengths }: Props) {
  return (
    <Section title="Bore at angles" aside="Diameters, counted clockwise from a mark that you choose.">
      <div className={part.halves}>
        <div>
          <label className={`${styles.field} ${styles.choice}`}>
            <span>Readings round the bore</span>
            <select name="angles" defaultValue={angleCountOf(fields)} className={controls.field}>
              {angleCounts.map((count) => (
                <option key={count} value={count}>
                  {count}, every {180 / count} degrees
                </option>
              ))}
            </select>
          </label>
          {sectionNumbers(fields).map((number) => (
            <fieldset key={number} className={styles.set}>
              <legend>{number === 1 ? "One depth" : `Depth ${number}`}</legend>
              <div className={styles.angles}>
                <LengthField name={`d${number}`} label="Depth" fields={fields} />
                {anglesOf(fields).map((angle) => (
                  <LengthField
                    key={angle}
                    name={`d${number}-${angle}`}
                    label={`at ${angle}°`}
                    fields={fields}
                  />
                ))}
              </div>
            </fieldset>
          ))}
        </div>
        <div>
          {diameters.length > 0 ? (
            <BoreMeans fields={fields} diameters={diameters} pistonMm={pistonMm} lengths={lengths} />
          ) : (
            <StateNote title="No diameter yet">
              <p>
                Three angles give the oval, four tell how far it may be out, five tell a dent from an oval.
                Take six and you have all three.
              </p>
            </StateNote>
          )}
        </div>
      </div>
    </Section>
  );
}

function BoreMeans({ fields, diameters, pistonMm, lengths }: Props) {
  const read = diameters.map(({ depth, readings }) => ({
    depthMm: depth === undefined ? null : (mmOf(depth, "depth") ?? null),
    readings: readings.flatMap(({ angle, diameter }) => {
      const diameterMm = mmOf(diameter, "diameter");
      return diameterMm === undefined ? [] : [{ angleDeg: angle, diameterMm }];
    }),
  }));
  const { sections, taper } = boreMap(read);
  const scale = boreScale(
    sections,
    read.map(({ readings }) => readings),
    unitOf(fields),
  );
  const notes = new Set(sections.flatMap(({ oval }) => (oval.kind === "fitted" ? oval.notes : [])));
  return (
    <>
      <div className={part.sections}>
        {sections.map((section, index) => {
          const title = `${diameters[index]?.part ?? "Bore"}${
            section.depthMm === null ? "" : ` at ${lengths.depth(section.depthMm)}`
          }`;
          const words = boreWords(section, lengths);
          return (
            <article key={index}>
              <h3>{title}</h3>
              {scale ? (
                <BoreDrawing
                  title={title}
                  section={section}
                  readings={read[index]?.readings ?? []}
                  scale={scale}
                  lengths={lengths}
                />
              ) : null}
              {scale && section.oval.kind === "fitted" ? (
                <p className="small soft">Shape drawn {scale.exaggeration} times as strong as its size.</p>
              ) : null}
              <ul className={part.means}>
                {[words.press, words.oval, words.dent].map((sentence) =>
                  sentence ? <li key={sentence}>{sentence}</li> : null,
                )}
              </ul>
              <Numbers caption="The same in figures" rows={sectionRows(section)} />
            </article>
          );
        })}
        {diameters.length > 1 ? (
          <article>
            <h3>Down the bore</h3>
            <DownTheBore sections={sections} pistonMm={pistonMm} unit={unitOf(fields)} lengths={lengths} />
            <p className={part.means}>{taperWords(taper, lengths)}</p>
          </article>
        ) : null}
      </div>
      {[...notes].map((note) => (
        <p key={note} className={part.limit}>
          {note}
        </p>
      ))}
    </>
  );
}

function mmOf(text: string, kind: "diameter" | "depth"): number | undefined {
  const read = readSize(text, kind);
  return read.kind === "length" ? read.mm : undefined;
}
