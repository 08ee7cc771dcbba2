import Link from "next/link";
import { WarningRow } from "@/app/_bench/WarningRow";
import controls from "@/app/_components/controls.module.css";
import { labelOf } from "@/app/_components/labelOf";
import { FormFold } from "@/app/sheets/_components/FormFold";
import { type Fold, SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import styles from "@/app/sheets/_components/SheetForm.module.css";
import { TypedChoice } from "@/app/sheets/_components/TypedChoice";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import { isRepairStep } from "@/lib/casebook/step";
import type { Warning } from "@/lib/consult/answer";
import type { Repair } from "@/lib/vocabulary/repair";

type Props = Readonly<{
  sheet: SheetVersion;
  kase: Case;
  repair: Repair;
  repairs: ReadonlyMap<string, Repair>;
  warning: Warning | undefined;
  part: string;
  fold: Fold;
}>;

/** From this risk class on a repair is looked ahead at before it is begun. */
const forceful = 3;
const results = [
  { id: "fixed", label: "Fixed it" },
  { id: "better", label: "Made it better" },
  { id: "no-change", label: "Changed nothing" },
];
const payers = [
  { id: "shop", label: "The shop" },
  { id: "customer", label: "The customer" },
];

/** A repair to be logged with its result, after what should be known before it is done. */
export function LogRepair({ sheet, kase, repair, repairs, warning, part, fold }: Props) {
  const onPlan = kase.plan?.filter((planned) => planned.repair === repair.id) ?? [];
  const wasSeen = onPlan.some(({ seen }) => seen !== undefined);
  const earlier = kase.path.flatMap((step, at) =>
    isRepairStep(step)
      ? [{ id: String(at + 1), label: `Step ${at + 1}: ${labelOf(repairs, step.repair)}` }]
      : [],
  );
  return (
    <SheetForm sheet={sheet} wish="log" name={`repair-${repair.id}`} hasChoices fold={fold}>
      {warning ? <WarningRow warning={warning} /> : null}
      {repair.risk >= forceful && !wasSeen ? (
        <p className="small">
          What goes before it is not kept as seen yet: {onPlan.length > 0 ? "tick it off" : "put it"} on the{" "}
          <Link href="#plan">plan</Link> first.
        </p>
      ) : null}
      <input type="hidden" name="step.0.what" value={`repair ${repair.id}`} />
      <div className={styles.fields}>
        <TypedField name="step.0.part" label="Part" value={part} list="parts" />
        <TypedField
          name="step.0.minutes"
          label="Minutes"
          blank={kase.clock ? "clock's" : undefined}
          value={kase.clock ? "" : String(repair.minutes.usual)}
          kind="number"
          className={styles.narrow}
        />
        <TypedField name="step.0.note" label="Note" className={styles.half} />
      </div>
      <fieldset className={styles.outcomes}>
        <legend>Result: one tap logs it</legend>
        {results.map(({ id, label }) => (
          <button key={id} type="submit" name="step.0.found" value={id} className={controls.plain}>
            {label}
          </button>
        ))}
        <FormFold summary="It did harm" sentBy={{ name: "step.0.found", value: "harm" }}>
          <div className={styles.fields}>
            <TypedField name="harmWhat" label="What happened to the instrument" className={styles.wide} />
            <TypedField name="harmHow" label="How it came to that" className={styles.wide} />
            {earlier.length > 0 ? (
              <TypedChoice
                name="harmStep"
                label="By which step"
                none="This one"
                options={earlier}
                hint="by an earlier one: the harm alone is kept, no new step"
              />
            ) : null}
            <TypedField name="harmMinutes" label="Minutes to make good" kind="number" />
            <TypedChoice name="harmPaidBy" label="Who pays for it" value="shop" options={payers} />
          </div>
          <p className={styles.buttons}>
            <button type="submit" name="step.0.found" value="harm" className={controls.lead}>
              Log the harm
            </button>
          </p>
        </FormFold>
      </fieldset>
    </SheetForm>
  );
}
