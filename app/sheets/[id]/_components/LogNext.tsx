import controls from "@/app/_components/controls.module.css";
import { RiskMark } from "@/app/_components/RiskMark";
import { Section } from "@/app/_components/Section";
import { type Fold, SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import fields from "@/app/sheets/_components/SheetForm.module.css";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import type { Answer } from "@/lib/consult/answer";
import type { Bench } from "@/lib/consult/bench/bench";
import type { JobInView } from "@/lib/consult/repairs/countLikeJobs";
import { likelyPart } from "@/lib/consult/sheet/likelyPart";
import { warnOfRepair } from "@/lib/consult/sheet/warnOfRepair";
import type { Check } from "@/lib/vocabulary/check";
import type { Repair } from "@/lib/vocabulary/repair";
import { ClockPart } from "./ClockPart";
import { LogCheck } from "./LogCheck";
import styles from "./LogNext.module.css";
import { LogRepair } from "./LogRepair";
import { whatChoices } from "./sheetChoices";

type Props = Readonly<{
  sheet: SheetVersion;
  kase: Case;
  answer: Answer;
  job: JobInView;
  bench: Bench;
  /** `check ID` or `repair ID` that was chosen from the list; anything else counts as none. */
  what: string;
}>;

/** As many as stay in sight. */
const shownFirst = 4;

/** What was chosen from the list stands open. */
const chosen = (label: string): Fold => ({
  summary: <h3>{label}</h3>,
  className: styles.what,
  isOpen: true,
});
/** What is proposed stands shut behind its minutes and risk, one open at a time. */
const listed = ({ label, risk }: Pick<Check, "label" | "risk">, minutes: number): Fold => ({
  summary: (
    <>
      <b>{label}</b>
      <span className={styles.minutesOf}>{Math.round(minutes) || "<1"} min</span>
      <RiskMark riskClass={risk} />
    </>
  ),
  className: styles.what,
  name: "log",
});

/** What to log next: what was chosen, the checks that would tell most, the repairs in view, or anything said in words. */
export function LogNext({ sheet, kase, answer, job, bench, what }: Props) {
  const { vocabulary } = bench;
  const { checks, repairs } = vocabulary;
  const [, kind, id = ""] = /^(check|repair) ([a-z0-9-]+)$/.exec(what) ?? [];
  const chosenCheck = kind === "check" ? checks.get(id) : undefined;
  const chosenRepair = kind === "repair" ? repairs.get(id) : undefined;
  const next = answer.nextChecks.slice(0, shownFirst).flatMap((one) => checks.get(one.id) ?? []);
  const planned = kase.plan?.map(({ repair }) => repair) ?? [];
  const likely = answer.causes
    .slice(0, 2)
    .flatMap(({ id: cause }) => vocabulary.causes.get(cause)?.repairs ?? []);
  const inView = [...new Set(planned.length > 0 ? planned : likely)]
    .flatMap((one) => repairs.get(one) ?? [])
    .filter((repair) => repair !== chosenRepair);
  const places = [...checks.values()].find(({ reads }) => reads === "place")?.outcomes ?? [];
  const logCheck = (check: Check, fold: Fold) => (
    <LogCheck
      key={check.id}
      sheet={sheet}
      check={check}
      hasClock={kase.clock !== undefined}
      part={likelyPart(kase, check.parts, vocabulary)}
      places={check.reads === "travel" ? places.map((one) => ({ id: one.id, label: one.label })) : []}
      fold={fold}
    />
  );
  const logRepair = (repair: Repair, fold: Fold) => (
    <LogRepair
      key={repair.id}
      sheet={sheet}
      repair={repair}
      repairs={repairs}
      kase={kase}
      warning={warnOfRepair(bench, repair.id, job)}
      part={likelyPart(kase, repair.parts, vocabulary)}
      fold={fold}
    />
  );
  return (
    <Section title="Log the next step" id="log" className="unprinted">
      <ClockPart sheet={sheet} clock={kase.clock} />
      {chosenCheck ? logCheck(chosenCheck, chosen(chosenCheck.label)) : null}
      {chosenRepair ? logRepair(chosenRepair, chosen(chosenRepair.label)) : null}
      <h3 className={styles.group}>Checks that would tell most</h3>
      {next.length === 0 ? (
        <p className="small soft">
          None that is open would tell much more: enough is known to choose a repair.
        </p>
      ) : null}
      {next
        .filter((check) => check !== chosenCheck)
        .map((check) => logCheck(check, listed(check, check.minutes)))}
      {inView.length > 0 ? (
        <h3 className={styles.group}>
          {planned.length > 0 ? "Repairs on the plan" : "Repairs for what is likeliest"}
        </h3>
      ) : null}
      {inView.slice(0, shownFirst).map((repair) => logRepair(repair, listed(repair, repair.minutes.usual)))}
      <h3 className={styles.group}>Anything else</h3>
      <form method="get" action={`/sheets/${kase.id}#log`} className={styles.choose}>
        <div className={fields.field}>
          <label htmlFor="what">Another check or repair</label>
          <select id="what" name="what" className={controls.field} defaultValue="">
            <option value="">Choose one</option>
            {whatChoices(vocabulary, kase.instrument).map((group) => (
              <optgroup key={group.label} label={group.label}>
                {group.options.map((option) => (
                  <option key={option.id} value={option.id}>
                    {option.label}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
        </div>
        <button type="submit" className={controls.plain}>
          Take it
        </button>
      </form>
      <SheetForm sheet={sheet} wish="say" name="say" className={styles.choose}>
        <TypedField name="words" label="Or say what you found, as at the bench" />
        <TypedField
          name="step.0.minutes"
          label="Minutes"
          blank={kase.clock ? "clock's" : undefined}
          kind="number"
          className={styles.minutes}
        />
        <button type="submit" className={controls.plain}>
          Log it
        </button>
      </SheetForm>
    </Section>
  );
}
