import controls from "@/app/_components/controls.module.css";
import { formatMinutes } from "@/app/_components/formatMinutes";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import { TypedField } from "@/app/sheets/_components/TypedField";
import type { Case } from "@/lib/casebook/caseFile";
import { clockMinutes } from "@/lib/consult/sheet/clock";
import styles from "./ClockPart.module.css";
import { RunningClock } from "./RunningClock";

type Props = Readonly<{ sheet: SheetVersion; clock: Case["clock"] }>;

/** The job's clock: its minutes go to the next step that is logged. It runs on in the job's file, whatever becomes of this page. */
export function ClockPart({ sheet, clock }: Props) {
  if (!clock) {
    return (
      <SheetForm sheet={sheet} wish="clock" name="clock" className={styles.clock}>
        <button type="submit" name="clock" value="start" className={controls.plain}>
          Start the clock
        </button>
        <span className="small soft">its minutes go to the next step</span>
      </SheetForm>
    );
  }
  const isRunning = clock.since !== undefined;
  return (
    <div className={styles.clock} data-running={isRunning ? "" : undefined}>
      <p>
        <RunningClock
          minutes={clock.minutes}
          since={clock.since}
          first={formatMinutes(Math.floor(clockMinutes(clock, Date.now())))}
        />
        <span className="small soft">
          {isRunning ? "on the clock, and running" : "on the clock, which stands"}; they go to the next step
        </span>
      </p>
      <SheetForm sheet={sheet} wish="clock" name="clock" className={controls.row ?? ""}>
        <button type="submit" name="clock" value={isRunning ? "stop" : "start"} className={controls.plain}>
          {isRunning ? "Stop it" : "Let it run on"}
        </button>
        <button type="submit" name="clock" value="off" className={controls.word}>
          Without a clock
        </button>
      </SheetForm>
      <SheetForm
        sheet={sheet}
        wish="clock"
        name="clock-set"
        className={styles.set}
        fold={{ summary: "Put it right", summaryClassName: controls.opens }}
      >
        <TypedField name="clockMinutes" label="Minutes it should show" kind="number" />
        <button type="submit" name="clock" value="set" className={controls.plain}>
          Set it
        </button>
      </SheetForm>
    </div>
  );
}
