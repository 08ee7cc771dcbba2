import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import { TypedChoice } from "@/app/sheets/_components/TypedChoice";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import type { Answer } from "@/lib/consult/answer";
import type { Bench } from "@/lib/consult/bench/bench";
import type { JobInView } from "@/lib/consult/repairs/countLikeJobs";
import { warnOfRepair } from "@/lib/consult/sheet/warnOfRepair";
import { PlannedRepair } from "./PlannedRepair";
import styles from "./PlanPart.module.css";
import { repairChoices } from "./sheetChoices";

type Props = Readonly<{
  sheet: SheetVersion;
  kase: Case;
  answer: Answer;
  job: JobInView;
  bench: Bench;
}>;

/** The repairs that were chosen, each with what to know before it is begun, and the choosing of another. */
export function PlanPart({ sheet, kase, answer, job, bench }: Props) {
  const plan = kase.plan ?? [];
  return (
    <Section title="Plan" id="plan" aside="look before forcing" className="unprinted">
      {plan.length === 0 ? (
        <p className="small soft">
          No repair is chosen yet. Choose one, and what to check before it is begun stands here.
        </p>
      ) : null}
      {plan.map((planned, at) => {
        const warning = warnOfRepair(bench, planned.repair, job);
        return warning ? (
          <PlannedRepair
            key={`${at} ${planned.repair}`}
            sheet={sheet}
            kase={kase}
            planned={planned}
            at={at}
            warning={warning}
            vocabulary={bench.vocabulary}
          />
        ) : null;
      })}
      <SheetForm sheet={sheet} wish="plan" name="plan" className={styles.choose}>
        <TypedChoice
          name="repair"
          label={plan.length === 0 ? "Choose a repair" : "Choose another repair"}
          none="Choose one"
          groups={repairChoices(answer.causes, bench.vocabulary, kase.instrument)}
        />
        <TypedField
          name="step.0.part"
          label="On which part"
          list="parts"
          hint="blank: the one that is in trouble"
        />
        <button type="submit" className={controls.plain}>
          Put it on the plan
        </button>
      </SheetForm>
    </Section>
  );
}
