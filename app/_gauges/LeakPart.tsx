import { readLeak } from "@/lib/gauging/fits/readLeak";
import { Section } from "../_components/Section";
import { StateNote } from "../_components/StateNote";
import styles from "./Fields.module.css";
import type { GaugesFields } from "./gaugesFields";
import { leakOfFields } from "./gaugesInput";
import { LeakMeans } from "./LeakMeans";
import { LengthField } from "./LengthField";
import part from "./Part.module.css";

/** How much a closed joint or instrument leaks, by the fall of its pressure or by a flow meter. */
export function LeakPart({ fields }: Readonly<{ fields: GaugesFields }>) {
  const leak = readLeak(leakOfFields(fields));
  return (
    <Section title="Leak" aside="A few kPa at the most. Never the shop's air line.">
      <div className={part.halves}>
        <div>
          <fieldset className={styles.set}>
            <legend>By the fall of the pressure, all holes shut</legend>
            <div className={styles.pair}>
              <LengthField name="leakv" label="Volume, hose and all" fields={fields} such="450 ml" words />
              <LengthField name="leakp" label="Pressure at first" fields={fields} such="30 mbar" words />
              <LengthField name="leakq" label="Pressure then" fields={fields} such="18 mbar" words />
              <LengthField name="leakt" label="After" fields={fields} such="10 s" words />
            </div>
          </fieldset>
          <fieldset className={styles.set}>
            <legend>Or by a flow meter</legend>
            <div className={styles.pair}>
              <LengthField
                name="leakf"
                label="Flow that holds the pressure"
                fields={fields}
                such="40 ml/min"
                words
              />
              <LengthField name="leakfp" label="At a pressure of" fields={fields} such="30 mbar" words />
            </div>
          </fieldset>
          <div className={styles.pair}>
            <LengthField
              name="leakgood"
              label="A sound one's leak, as said here"
              fields={fields}
              such="8 ml/min"
              words
            />
          </div>
        </div>
        <div>
          {leak.kind === "none" ? (
            <StateNote title="No leak read yet">
              <p>What a shop calls tight is its own: read a sound one first, in the same way.</p>
            </StateNote>
          ) : leak.kind === "write" ? (
            <StateNote title="Not counted yet" tone="warn">
              {leak.faults.map((fault) => (
                <p key={fault}>{fault}.</p>
              ))}
            </StateNote>
          ) : (
            <LeakMeans leak={leak} />
          )}
        </div>
      </div>
    </Section>
  );
}
