import controls from "@/app/_components/controls.module.css";
import { Piece } from "@/app/_components/Piece";
import type { StepRow } from "@/lib/casebook/form/caseForm";
import type { DraftProblem } from "@/lib/consult/writeUp/draftCase";
import { ChoiceControl } from "./ChoiceControl";
import type { Choices } from "./choices";
import styles from "./StepRowFields.module.css";
import { TextControl } from "./TextControl";

type Props = Readonly<{
  at: number;
  row: StepRow;
  choices: Choices;
  change: (change: Partial<StepRow>) => void;
  problemAt: (control: string) => DraftProblem | undefined;
  /** Undefined while the page has not woken up: the buttons would do nothing. */
  moveUp: (() => void) | undefined;
  takeOut: (() => void) | undefined;
}>;

const results = [
  { id: "fixed", label: "Fixed it" },
  { id: "better", label: "Made it better" },
  { id: "no-change", label: "Changed nothing" },
  { id: "harm", label: "Did harm" },
];

/** One step of the path: what was checked or mended, on which part, and what came of it. */
export function StepRowFields({ at, row, choices, change, problemAt, moveUp, takeOut }: Props) {
  const name = (field: string) => `step.${at}.${field}`;
  const put = (field: keyof StepRow) => (text: string) => change({ [field]: text });
  const problem = (field: string) => problemAt(name(field));
  const found = row.what.startsWith("repair ") ? results : choices.outcomes[row.what.replace(/^check /, "")];
  const isKept = row.what === "kept";
  return (
    <li className={styles.step}>
      <span className={styles.number}>{at + 1}</span>
      <input type="hidden" name={name("from")} value={row.from} />
      {isKept ? (
        <div className={styles.kept}>
          {(["what", "words", "minutes"] as const).map((field) => (
            <input key={field} type="hidden" name={name(field)} value={row[field]} />
          ))}
          <Piece hold="said" about="kept from the file">
            {row.words}
          </Piece>
          {problem("what") ? (
            <p className={styles.wrong}>
              Found {problem("what")?.received}; write {problem("what")?.expected}
            </p>
          ) : null}
        </div>
      ) : (
        <div className={styles.fields}>
          <ChoiceControl
            name={name("what")}
            label="Check or repair"
            value={row.what}
            none="Not chosen"
            groups={choices.whats}
            onText={put("what")}
            problem={problem("what")}
            className={styles.what ?? ""}
          />
          <TextControl
            name={name("part")}
            label="Part"
            value={row.part}
            list="parts"
            className={styles.part ?? ""}
            onText={put("part")}
            problem={problem("part")}
          />
          {found ? (
            <ChoiceControl
              name={name("found")}
              label={row.what.startsWith("repair ") ? "Result" : "Found"}
              value={row.found}
              none="Not chosen"
              options={found}
              onText={put("found")}
              problem={problem("found")}
              className={styles.found ?? ""}
            />
          ) : (
            <TextControl
              name={name("found")}
              label="Found, or result"
              value={row.found}
              onText={put("found")}
              problem={problem("found")}
              className={styles.found ?? ""}
            />
          )}
          <ChoiceControl
            name={name("where")}
            label="Where in the stroke"
            value={row.where}
            none="Not said"
            options={choices.places}
            onText={put("where")}
            problem={problem("where")}
          />
          <TextControl
            name={name("minutes")}
            label="Minutes"
            value={row.minutes}
            kind="number"
            onText={put("minutes")}
            problem={problem("minutes")}
          />
          <TextControl
            name={name("note")}
            label="Note"
            value={row.note}
            rows={1}
            onText={put("note")}
            problem={problem("note")}
            className={styles.note ?? ""}
          />
        </div>
      )}
      <span className={styles.acts}>
        {moveUp && at > 0 ? (
          <button type="button" className={controls.word} onClick={moveUp}>
            Up<span className="heard">, step {at + 1}</span>
          </button>
        ) : null}
        {takeOut ? (
          <button type="button" className={controls.word} onClick={takeOut}>
            Take out<span className="heard">, step {at + 1}</span>
          </button>
        ) : null}
      </span>
    </li>
  );
}
