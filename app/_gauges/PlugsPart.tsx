import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import { Section } from "../_components/Section";
import { StateNote } from "../_components/StateNote";
import styles from "./Fields.module.css";
import { type GaugesFields, unitOf } from "./gaugesFields";
import { LengthField } from "./LengthField";
import part from "./Part.module.css";
import { PlugsMean } from "./PlugsMean";

type Props = Readonly<{ fields: GaugesFields; gauge: ReadingsInput["gauges"][number] | undefined }>;

/** Plugs in a casing and its sibling, and the piston: fields on the one side, the ladder and what it means on the other. */
export function PlugsPart({ fields, gauge }: Props) {
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
            <PlugsMean gauge={gauge} unit={unitOf(fields)} />
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
