import controls from "@/app/_components/controls.module.css";
import type { StepView } from "@/app/_components/stepViews";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import { TypedField } from "@/app/sheets/_components/TypedField";
import styles from "./MendMinutes.module.css";

type Props = Readonly<{ sheet: SheetVersion; steps: readonly StepView[] }>;

/** The minutes of the logged steps, to be put right. */
export function MendMinutes({ sheet, steps }: Props) {
  return (
    <SheetForm
      sheet={sheet}
      wish="minutes"
      name="minutes"
      fold={{ summary: "Put minutes right", className: styles.mend, summaryClassName: controls.opens }}
    >
      {steps.map(({ title, minutes }, at) => (
        <div key={`${at} ${title}`} className={styles.step}>
          <input type="hidden" name={`step.${at}.from`} value={at} />
          <TypedField
            name={`step.${at}.minutes`}
            label={`${at + 1}. ${title}`}
            kind="number"
            value={String(minutes)}
          />
        </div>
      ))}
      <p>
        <button type="submit" className={controls.plain}>
          Keep these minutes
        </button>
      </p>
    </SheetForm>
  );
}
