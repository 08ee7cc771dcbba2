import controls from "@/app/_components/controls.module.css";
import type { ImportDraft } from "@/lib/exchange/import/importDraft";
import styles from "./BringIn.module.css";

const questions = [
  {
    name: "dates",
    label: "Dates such as 03/04/2021",
    choices: [
      { id: "", label: "As the file itself proves" },
      { id: "dmy", label: "Day first: 3 April" },
      { id: "mdy", label: "Month first: March 4" },
      { id: "ymd", label: "Year first, in two digits" },
    ],
  },
  {
    name: "decimal",
    label: "Numbers such as 1,250",
    choices: [
      { id: "", label: "As the file itself proves" },
      { id: "point", label: "Twelve hundred and fifty" },
      { id: "comma", label: "One and a quarter" },
    ],
  },
  {
    name: "incomplete",
    label: "A job without known cause, outcome, minutes or closing day",
    choices: [
      { id: "refuse", label: "Leave it out, and say so" },
      { id: "open", label: "Take it in as an open sheet" },
    ],
  },
] as const;

/** What only a person can say about a file, where the file does not tell. */
export function HowWritten({ choices: said }: Readonly<{ choices: ImportDraft["choices"] }>) {
  return (
    <div className={styles.written}>
      {questions.map(({ name, label, choices }) => (
        <div key={name}>
          <label htmlFor={name}>{label}</label>
          <select id={name} name={name} defaultValue={said[name] ?? ""} className={controls.field}>
            {choices.map((choice) => (
              <option key={choice.id} value={choice.id}>
                {choice.label}
              </option>
            ))}
          </select>
        </div>
      ))}
    </div>
  );
}
