import controls from "@/app/_components/controls.module.css";
import { RiskMark } from "@/app/_components/RiskMark";
import { Section } from "@/app/_components/Section";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import fields from "@/app/sheets/_components/SheetForm.module.css";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import type { Answer } from "@/lib/consult/answer";
import type { Bench } from "@/lib/consult/bench/bench";
import { likelyPart } from "@/lib/consult/sheet/likelyPart";
import { warnOfRepair } from "@/lib/consult/sheet/warnOfRepair";
import type { Check } from "@/lib/vocabulary/check";
import { ClockPart } from "./ClockPart";
import { LogCheck } from "./LogCheck";
import styles from "./LogNext.module.css";
import { LogRepair } from "./LogRepair";
import { whatChoices } from "./sheetChoices";

type Props = Readonly<{
  sheet: SheetVersion;
  kase: Case;
  answer: Answer;
  bench: Bench;
  /** `check ID` or `repair ID` that was chosen from the list; anything else counts as none. */
  what: string;
}>;

/** As many as stay in sight. */
const shownFirst = 4;

/** What to log next: what was chosen, the checks that would tell most, the repairs in view, or anything said in words. */
export function LogNext({ sheet, kase, answer, bench, what }: Props) {
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
  const inView = [...new Set(planned.length > 0 ? planned : likely)].flatMap((one) => repairs.get(one) ?? []);
  const places = [...checks.values()].find(({ reads }) => reads === "place")?.outcomes ?? [];
  const logCheck = (check: Check) => (
    <LogCheck
      sheet={sheet}
      check={check}
      hasClock={kase.clock !== undefined}
      part={likelyPart(kase, check.parts, vocabulary)}
      places={check.reads === "travel" ? places.map((one) => ({ id: one.id, label: one.label })) : []}
    />
  );
  const logRepair = (repair: (typeof inView)[number]) => (
    <LogRepair
      sheet={sheet}
      repair={repair}
      kase={kase}
      warning={warnOfRepair(bench, repair.id)}
      part={likelyPart(kase, repair.parts, vocabulary)}
    />
  );
  return (
    <Section title="Log the next step" id="log" className="unprinted">
      <ClockPart sheet={sheet} clock={kase.clock} />
      {chosenCheck ? (
        <details open className={styles.what}>
          <summary>
            <h3>{chosenCheck.label}</h3>
          </summary>
          {logCheck(chosenCheck)}
        </details>
      ) : null}
      {chosenRepair ? (
        <details open className={styles.what}>
          <summary>
            <h3>{chosenRepair.label}</h3>
          </summary>
          {logRepair(chosenRepair)}
        </details>
      ) : null}
      <h3 className={styles.group}>Checks that would tell most</h3>
      {next.length === 0 ? (
        <p className="small soft">
          None that is open would tell much more: enough is known to choose a repair.
        </p>
      ) : null}
      {next
        .filter((check) => check !== chosenCheck)
        .map((check) => (
          <details key={check.id} className={styles.what} name="log">
            <summary>
              <b>{check.label}</b>
              <span className={styles.minutesOf}>{Math.round(check.minutes) || "<1"} min</span>
              <RiskMark riskClass={check.risk} />
            </summary>
            {logCheck(check)}
          </details>
        ))}
      {inView.length > 0 ? (
        <h3 className={styles.group}>
          {planned.length > 0 ? "Repairs on the plan" : "Repairs for what is likeliest"}
        </h3>
      ) : null}
      {inView
        .filter((repair) => repair !== chosenRepair)
        .slice(0, shownFirst)
        .map((repair) => (
          <details key={repair.id} className={styles.what} name="log">
            <summary>
              <b>{repair.label}</b>
              <span className={styles.minutesOf}>{repair.minutes.usual} min</span>
              <RiskMark riskClass={repair.risk} />
            </summary>
            {logRepair(repair)}
          </details>
        ))}
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
