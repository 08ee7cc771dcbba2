import controls from "@/app/_components/controls.module.css";
import { Section } from "@/app/_components/Section";
import { isFilledStep, sumStepMinutes } from "@/lib/casebook/form/caseForm";
import { CauseRowFields } from "./CauseRowFields";
import { ChoiceControl } from "./ChoiceControl";
import type { Choices } from "./choices";
import styles from "./FormView.module.css";
import { StepRowFields } from "./StepRowFields";
import { TextControl } from "./TextControl";
import type { useDraft } from "./useDraft";

type Props = Readonly<{ writing: ReturnType<typeof useDraft>; choices: Choices; isAwake: boolean }>;

const statuses = [
  { id: "closed", label: "Finished" },
  { id: "open", label: "Still on the bench" },
];
const outcomes = [
  { id: "fixed", label: "Fixed" },
  { id: "improved", label: "Improved" },
  { id: "not-fixed", label: "Not fixed" },
  { id: "declined", label: "Declined" },
];

/** The case as a form, in the order in which a job goes. */
export function FormView({ writing, choices, isAwake }: Props) {
  const { draft, problemAt, setField, setStep, setCause } = writing;
  const { form } = draft;
  const text = (name: Exclude<keyof typeof form, "steps" | "causes">) => ({
    name,
    value: form[name],
    onText: (words: string) => setField(name, words),
    problem: problemAt(name),
  });
  const sum = sumStepMinutes(form);
  return (
    <>
      <input type="hidden" name="base" value={draft.base} />
      <datalist id="parts">
        {choices.parts.map((part) => (
          <option key={part} value={part} />
        ))}
      </datalist>
      <Section title="What came in">
        <div className={styles.grid}>
          <TextControl {...text("title")} label="Title" className={styles.wide ?? ""} />
          <TextControl {...text("id")} label="Case number" />
          <ChoiceControl {...text("status")} label="The job is" none="Not said" options={statuses} />
          <ChoiceControl
            {...text("instrument")}
            label="Instrument"
            none="Not chosen"
            groups={choices.instruments}
          />
          <TextControl {...text("maker")} label="Maker" />
          <TextControl {...text("model")} label="Model" />
          <TextControl {...text("received")} label="Taken in" kind="day" />
          <TextControl
            {...text("complaint")}
            label="Complaint, in the customer's words"
            rows={3}
            className={styles.half ?? ""}
          />
          <TextControl
            {...text("arrival")}
            label="State on arrival, a line each"
            rows={3}
            className={styles.half ?? ""}
          />
        </div>
      </Section>
      <Section title="The path" aside="in the order in which it happened; say parts as at the bench">
        <ol className={styles.rows}>
          {form.steps.map((row, at) => (
            // Rows have no name of their own; each holds only what its place in the list gives it.
            <StepRowFields
              key={`step ${at}`}
              at={at}
              row={row}
              choices={choices}
              change={(change) => setStep(at, change)}
              problemAt={problemAt}
              moveUp={isAwake && isFilledStep(row) ? () => writing.moveStepUp(at) : undefined}
              takeOut={isAwake && isFilledStep(row) ? () => writing.takeOutStep(at) : undefined}
            />
          ))}
        </ol>
        <button type="submit" name="wish" value="more-steps" className={controls.plain}>
          More rows
        </button>
      </Section>
      <Section title="What it was">
        <ul className={styles.causes}>
          {form.causes.map((row, at) => (
            <CauseRowFields
              key={`cause ${at}`}
              at={at}
              row={row}
              choices={choices}
              change={(change) => setCause(at, change)}
              problemAt={problemAt}
            />
          ))}
        </ul>
        <button type="submit" name="wish" value="more-causes" className={controls.plain}>
          Another cause
        </button>
      </Section>
      <Section title="How it ended">
        <div className={styles.grid}>
          <ChoiceControl {...text("outcome")} label="Outcome" none="Not said" options={outcomes} />
          <TextControl {...text("closed")} label="Closed on" kind="day" />
          <TextControl
            {...text("minutes")}
            label="Minutes it took"
            kind="number"
            hint={
              sum > 0 && form.minutes.trim() !== String(sum) ? (
                <button type="submit" name="wish" value="sum" className={controls.word}>
                  The steps add up to {sum}: take that
                </button>
              ) : null
            }
          />
          <TextControl {...text("quotedMinutes")} label="Minutes quoted" kind="number" />
          <TextControl {...text("quotedPrice")} label="Price quoted" kind="number" />
          <TextControl {...text("charge")} label="Charged" kind="number" />
        </div>
      </Section>
      <Section title="For the next one">
        <TextControl
          {...text("lessons")}
          label="Lessons, a line each: one sentence worth telling an apprentice"
          rows={2}
        />
        <TextControl {...text("story")} label="The story, in Markdown" rows={8} />
      </Section>
    </>
  );
}
