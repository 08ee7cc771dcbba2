import type { GaugeAnswer } from "@/lib/consult/gauge/gaugeAnswer";
import type { ReadingsInput } from "@/lib/consult/gauge/readingsInput";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { SwapVerdict } from "../_bench/SwapVerdict";
import controls from "../_components/controls.module.css";
import { Section } from "../_components/Section";
import { StateNote } from "../_components/StateNote";
import { BorePart } from "./BorePart";
import { type GaugesFields, unitOf } from "./gaugesFields";
import { LeakPart } from "./LeakPart";
import { LegsPart } from "./LegsPart";
import { LiveForm } from "./LiveForm";
import part from "./Part.module.css";
import { PlugsPart } from "./PlugsPart";
import { Questions } from "./Questions";
import { questionsOf } from "./questionsOf";
import { SwapFields } from "./SwapFields";
import { SwapHowFields } from "./SwapHowFields";

type Props = Readonly<{
  /** The page that the readings stand in the address of. */
  path: string;
  fields: GaugesFields;
  input: ReadingsInput;
  answer: GaugeAnswer;
  vocabulary: Vocabulary;
}>;

/** Plugs, piston, bore and swaps of one valve: fields, and beside them what they come to. */
export function GaugesForm({ path, fields, input, answer, vocabulary }: Props) {
  const unit = unitOf(fields);
  const [gauge] = input.gauges;
  return (
    // In another unit the fields are written otherwise: they are made anew and do not keep what stood in them.
    <LiveForm key={unit} action={path}>
      <noscript>
        <button type="submit" className={controls.lead}>
          Read
        </button>
      </noscript>
      <input type="hidden" name="unit" value={unit === "mm" ? "mm" : "in"} />
      <Questions questions={questionsOf(fields, path)} />
      <PlugsPart fields={fields} gauge={gauge} />
      <BorePart fields={fields} diameters={input.diameters} piston={gauge?.piston?.diameter} />
      <LegsPart fields={fields} legs={input.legs[0]} vocabulary={vocabulary} />
      <LeakPart fields={fields} />
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
  );
}
