import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import { readLegs } from "@/lib/consult/understand/readReadings";
import { lengthWords } from "@/lib/gauging/lengths/lengthWords";
import { splayWords } from "@/lib/gauging/slides/splayWords";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { Section } from "../_components/Section";
import { StateNote } from "../_components/StateNote";
import styles from "./Fields.module.css";
import { type GaugesFields, legNumbers, unitOf } from "./gaugesFields";
import { LengthField } from "./LengthField";
import part from "./Part.module.css";

type Props = Readonly<{
  fields: GaugesFields;
  legs: ReadingsInput["legs"][number] | undefined;
  vocabulary: Vocabulary;
}>;

/** The two legs of a slide: how far apart at several places, and whether they spread. */
export function LegsPart({ fields, legs, vocabulary }: Props) {
  const { splay } = legs ? readLegs(undefined, legs, vocabulary).result : { splay: undefined };
  return (
    <Section title="Slide legs" aside="Across both legs, the same way each time.">
      <div className={part.halves}>
        <div>
          <fieldset className={styles.set}>
            <legend>From the brace down</legend>
            <div className={styles.pair}>
              <LengthField name="legs" label="Which" fields={fields} such="inner leg" words />
              <LengthField name="lpm" label="Give or take" fields={fields} />
            </div>
            <div className={styles.twos}>
              {legNumbers(fields).flatMap((number) => [
                <LengthField
                  key={`l${number}`}
                  name={`l${number}`}
                  label={`Place ${number}`}
                  fields={fields}
                />,
                <LengthField
                  key={`l${number}w`}
                  name={`l${number}w`}
                  label={`Across at place ${number}`}
                  fields={fields}
                />,
              ])}
            </div>
          </fieldset>
        </div>
        <div>
          {splay ? (
            <ul className={part.means}>
              {splayWords(splay, lengthWords(unitOf(fields))).map((sentence) => (
                <li key={sentence}>{sentence}</li>
              ))}
              {splay.kind === "measured" ? (
                <li>
                  {Math.abs(splay.angleDeg).toFixed(2)} degrees between the legs. Measure inners and outers by
                  themselves before anything is bent.
                </li>
              ) : null}
            </ul>
          ) : (
            <StateNote title="No leg measured yet">
              <p>
                At the brace and at the tips tells the splay; one place between tells a bowed leg from it.
              </p>
            </StateNote>
          )}
        </div>
      </div>
    </Section>
  );
}
