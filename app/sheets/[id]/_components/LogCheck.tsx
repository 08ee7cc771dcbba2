import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { RiskMark } from "@/app/_components/RiskMark";
import { type Fold, SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import styles from "@/app/sheets/_components/SheetForm.module.css";
import { TypedChoice } from "@/app/sheets/_components/TypedChoice";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Check } from "@/lib/vocabulary/check";

type Props = Readonly<{
  sheet: SheetVersion;
  check: Check;
  part: string;
  /** Whether the job's clock gives the minutes. */
  hasClock: boolean;
  /** Places in the stroke, where the check may be about one. */
  places: readonly Readonly<{ id: string; label: string }>[];
  fold: Fold;
}>;

/** A check to be logged: part, minutes and note as they are, then one tap on what was found. */
export function LogCheck({ sheet, check, part, hasClock, places, fold }: Props) {
  return (
    <SheetForm sheet={sheet} wish="log" name={`check-${check.id}`} hasChoices fold={fold}>
      <input type="hidden" name="step.0.what" value={`check ${check.id}`} />
      <p>
        {check.question} <RiskMark riskClass={check.risk} />{" "}
        <Link className="small" href={`/handbook/checks/${check.id}`} prefetch={false}>
          How it is done
        </Link>
      </p>
      <div className={styles.fields}>
        <TypedField name="step.0.part" label="Part" value={part} list="parts" />
        <TypedField
          name="step.0.minutes"
          label="Minutes"
          blank={hasClock ? "clock's" : undefined}
          value={hasClock ? "" : String(check.minutes)}
          kind="number"
          className={styles.narrow}
        />
        {places.length > 0 ? (
          <TypedChoice name="step.0.where" label="Where in the stroke" none="Not said" options={places} />
        ) : null}
        <TypedField name="step.0.note" label="Note" className={styles.wide} />
      </div>
      <fieldset className={styles.outcomes}>
        <legend>Found: one tap logs it</legend>
        {check.outcomes.map(({ id, label }) => (
          <button key={id} type="submit" name="step.0.found" value={id} className={controls.plain}>
            {label}
          </button>
        ))}
      </fieldset>
    </SheetForm>
  );
}
