"use client";

import { useEffect, useRef } from "react";
import controls from "@/app/_components/controls.module.css";
import styles from "./SearchBox.module.css";
import { useAskedWords } from "./useAskedWords";

type Props = Readonly<{
  words: string;
  /** What was chosen besides, carried along when the form is sent without JavaScript. */
  carried: readonly (readonly [string, string])[];
  longest: number;
}>;

/** The casebook's one box, answered as one types; a plain form without JavaScript. */
export function SearchBox({ words, carried, longest }: Props) {
  const { text, setText, isReading } = useAskedWords(words);
  const box = useRef<HTMLInputElement>(null);

  // What was typed before the page had woken up is in the box, but not yet known here.
  useEffect(() => {
    if (box.current) setText(box.current.value);
  }, [setText]);

  return (
    <form action="/casebook" method="get" role="search" className={styles.find} aria-busy={isReading}>
      {carried.map(([name, value]) => (
        <input key={name} type="hidden" name={name} value={value} />
      ))}
      <input
        ref={box}
        id="q"
        name="q"
        type="search"
        value={text}
        maxLength={longest}
        autoComplete="off"
        placeholder="Words of a complaint, a cause, a part, a maker"
        onChange={(event) => setText(event.target.value)}
      />
      <noscript>
        <button type="submit" className={controls.lead}>
          Look
        </button>
      </noscript>
    </form>
  );
}
