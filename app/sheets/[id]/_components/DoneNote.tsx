import controls from "@/app/_components/controls.module.css";
import { SheetForm, type SheetVersion } from "@/app/sheets/_components/SheetForm";
import type { TakenOff } from "@/lib/casebook/photos/findTakenOff";
import styles from "./DoneNote.module.css";

const words: Readonly<Record<string, string>> = {
  kept: "Kept as a bench sheet. From here every step is on disk as soon as it is tapped.",
  log: "Logged.",
  harm: "The harm is kept with the step that did it. To undo it, put the version before back, under Earlier versions.",
  say: "Logged as it was understood: look whether the path says what you meant.",
  undo: "The last step is taken back. The version with it is kept among the earlier ones.",
  edit: "Kept.",
  minutes: "The minutes are put right.",
  clock: "The clock is set.",
  quote: "The quote is kept with the job.",
  plan: "On the plan. Look at what stands beside it before it is begun.",
  unplan: "Off the plan.",
  look: "Kept as seen, with its ticks.",
  "take-over": "Taken over as a draft: look whether it fits this job.",
  photos: "The photos are kept with the job.",
  caption: "What it shows is kept.",
  "photo-off": "The photo is off the sheet. Its file is kept.",
  "photo-back": "The photo is back.",
  readings: "The readings are logged.",
  restore: "Put back. The version before it is kept too.",
  mine: "Your version stands. The other one is kept among the earlier versions.",
};

type Props = Readonly<{
  done: string | string[] | undefined;
  sheet: SheetVersion;
  hasSteps: boolean;
  /** The photo that was just taken off, where it still is. */
  takenOff: TakenOff | undefined;
}>;

/** What was just done, with its undoing at hand. */
export function DoneNote({ done, sheet, hasSteps, takenOff }: Props) {
  const said = typeof done === "string" ? words[done] : undefined;
  if (said === undefined) return null;
  const isStep = done === "log" || done === "say";
  return (
    <div className={`${styles.done} unprinted`} role="status">
      <p>{said}</p>
      {isStep && hasSteps ? (
        <SheetForm sheet={sheet} wish="undo" name="undo-done">
          <button type="submit" className={controls.word}>
            Undo
          </button>
        </SheetForm>
      ) : null}
      {done === "photo-off" && takenOff ? (
        <SheetForm sheet={sheet} wish="photo-back" name="photo-back">
          <input type="hidden" name="photo" value={takenOff.photo.file} />
          <input type="hidden" name="caption" value={takenOff.photo.caption ?? ""} />
          <input type="hidden" name="at" value={takenOff.at} />
          <button type="submit" className={controls.word}>
            Undo
          </button>
        </SheetForm>
      ) : null}
    </div>
  );
}
