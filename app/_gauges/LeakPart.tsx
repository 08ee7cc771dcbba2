import { playingPa } from "@/lib/gauging/fits/leakRate";
import { Section } from "../_components/Section";
import { StateNote } from "../_components/StateNote";
import styles from "./Fields.module.css";
import type { GaugesFields } from "./gaugesFields";
import { LengthField } from "./LengthField";
import { leakOfFields } from "./leakOfFields";
import part from "./Part.module.css";

const ml = (amount: number) => `${Number(amount.toPrecision(3))} ml/min`;
const kPa = (pa: number) => `${Number((pa / 1000).toPrecision(3))} kPa`;

/** How much a closed joint or instrument leaks, by the fall of its pressure or by a flow meter. */
export function LeakPart({ fields }: Readonly<{ fields: GaugesFields }>) {
  const leak = leakOfFields(fields);
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
            <ul className={part.means}>
              <li>
                {ml(leak.mlPerMinute)} at {kPa(playingPa)}, about what a player blows at.
              </li>
              {leak.times === null ? null : (
                <li>{Number(leak.times.toPrecision(2))} times as much as the sound one.</li>
              )}
              <li>
                Read at {kPa(leak.read.atPa)}: {ml(leak.read.mlPerMinute)}. Thin gaps leak in proportion to
                the pressure; a hole that one could see through does not.
              </li>
            </ul>
          )}
        </div>
      </div>
    </Section>
  );
}
