import { checkThatReads } from "@/lib/vocabulary/checkThatReads";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import controls from "../_components/controls.module.css";
import type { GaugesFields } from "./gaugesFields";
import { swapsOf } from "./gaugesInput";
import styles from "./SwapFields.module.css";

type Props = Readonly<{ fields: GaugesFields; vocabulary: Vocabulary }>;

/** What each pair that rubs depended on: the place, the way, the turn. What stays with a part whatever it is tried with is its own. */
export function SwapHowFields({ fields, vocabulary }: Props) {
  const rubbing = swapsOf(fields).filter(({ result }) => result !== "free");
  const turns = Object.entries(vocabulary.words.swapTurns).map(([id, [label = id]]) => ({ id, label }));
  const questions = [
    { letter: "w", question: "Where", choices: checkThatReads(vocabulary, "place")?.outcomes ?? [] },
    { letter: "y", question: "Which way", choices: checkThatReads(vocabulary, "way")?.outcomes ?? [] },
    { letter: "t", question: "Turned in its place", choices: turns },
  ];
  return rubbing.map(({ guest, host, result }) => (
    <fieldset key={`${guest} ${host}`} className={styles.how}>
      <legend>
        {guest} in {host} {result}
      </legend>
      {questions.map(({ letter, question, choices }) => {
        const name = `s${guest.slice(-1)}-${host.slice(-1)}${letter}`;
        return (
          <label key={letter}>
            <span>{question}</span>
            <select name={name} defaultValue={fields[name] ?? ""} className={controls.field}>
              <option value="">not told</option>
              {choices.map(({ id, label }) => (
                <option key={id} value={id}>
                  {label.toLowerCase()}
                </option>
              ))}
            </select>
          </label>
        );
      })}
    </fieldset>
  ));
}
