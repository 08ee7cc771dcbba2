"use client";

import { useEffect, useRef } from "react";
import controls from "../_components/controls.module.css";
import { Echo } from "./Echo";
import type { InstrumentGroup } from "./instrumentOptions";
import type { Mark } from "./marksOf";
import styles from "./SaysForm.module.css";
import { useSaidWords } from "./useSaidWords";

type Props = Readonly<{
  says: string;
  instrument: string;
  /** What the words say the instrument is, where none was chosen. */
  heardInstrument: string | null;
  groups: readonly InstrumentGroup[];
  marks: readonly Mark[];
  /** The rest of the address, carried along when the form is sent without JavaScript. */
  carried: readonly (readonly [string, string])[];
  longest: number;
}>;

/** What came in: the sentence and the instrument, answered as they are typed; a plain form without JavaScript. */
export function SaysForm({ says, instrument, heardInstrument, groups, marks, carried, longest }: Props) {
  const { text, setText, chooseInstrument, isReading, isOnline } = useSaidWords(says);
  const box = useRef<HTMLTextAreaElement>(null);

  // What was typed before the page had woken up is in the box, but not yet known here.
  useEffect(() => {
    if (box.current) setText(box.current.value);
  }, [setText]);

  return (
    <form action="/" method="get" className={styles.ask}>
      {carried.map(([key, value]) => (
        <input key={`${key} ${value}`} type="hidden" name={key} value={value} />
      ))}
      <h1>
        <label htmlFor="says">What came in?</label>
      </h1>
      <div className={styles.box} data-reading={isReading}>
        <Echo text={text} marks={text === says ? marks : []} />
        <textarea
          ref={box}
          id="says"
          name="says"
          value={text}
          maxLength={longest}
          rows={3}
          autoComplete="off"
          spellCheck={false}
          placeholder="Say it as at the bench: 2nd valve slow coming up, oiled it, no change, no dents"
          onChange={(event) => setText(event.target.value)}
        />
      </div>
      <div className={styles.below}>
        <label htmlFor="instrument">Instrument</label>
        <select
          id="instrument"
          name="instrument"
          className={controls.field}
          value={instrument}
          onChange={(event) => chooseInstrument(event.target.value)}
        >
          <option value="">{heardInstrument ? `${heardInstrument} (from your words)` : "Not said"}</option>
          {groups.map(({ label, options }) => (
            <optgroup key={label} label={label}>
              {options.map((option) => (
                <option key={option.id} value={option.id}>
                  {option.label}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
        <noscript>
          <button type="submit" className={controls.lead}>
            Read
          </button>
        </noscript>
      </div>
      {isOnline ? null : (
        <p className={styles.offline} role="status">
          No connection. What you type is kept; it is read when the connection is back.
        </p>
      )}
    </form>
  );
}
