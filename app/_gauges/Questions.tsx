import controls from "../_components/controls.module.css";
import { StateNote } from "../_components/StateNote";
import type { Question } from "./questionsOf";

/** Lengths that were not counted, each with the ways in which it can be meant; one tap writes it so. */
export function Questions({ questions }: Readonly<{ questions: readonly Question[] }>) {
  if (questions.length === 0) return null;
  return (
    <StateNote level={2} tone="warn" title="Not counted until you say what is meant">
      <ul>
        {questions.map(({ field, got, why, could }, index) => (
          <li key={index}>
            {field}: <b>{got}</b>: {why}.{" "}
            <span className={controls.row}>
              {could.map(({ write, href }) => (
                // A whole page, so that the field itself shows what was chosen.
                <a key={write} href={href} className={controls.plain}>
                  It is {write}
                </a>
              ))}
            </span>
          </li>
        ))}
      </ul>
    </StateNote>
  );
}
