import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import controls from "../_components/controls.module.css";
import { Section } from "../_components/Section";
import { StateNote } from "../_components/StateNote";
import { BoreMeans } from "./BoreMeans";
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
import part from "./Part.module.css";

type Props = Readonly<{
  fields: GaugesFields;
  diameters: ReadingsInput["diameters"];
  piston: string | undefined;
}>;

/** The bore at several angles and depths: fields, then every depth drawn to one exaggerated scale. */
export function BorePart({ fields, diameters, piston }: Props) {
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
            <BoreMeans diameters={diameters} piston={piston} unit={unitOf(fields)} />
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
