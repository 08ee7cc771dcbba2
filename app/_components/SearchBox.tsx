"use client";

import { useEffect, useRef } from "react";
import controls from "./controls.module.css";
import styles from "./SearchBox.module.css";
import { useAskedWords } from "./useAskedWords";

type Props = Readonly<{
  /** The page that answers; its words stand in the address as `q`. */
  path: string;
  words: string;
  /** What one could look for. */
  such: string;
  /** What was chosen besides, carried along when the form is sent without JavaScript. */
  carried: readonly (readonly [string, string])[];
  longest: number;
}>;

/** The one box of a page that is answered as one types; a plain form without JavaScript. */
export function SearchBox({ path, words, such, carried, longest }: Props) {
  const { text, setText, isReading } = useAskedWords(words, path);
  const box = useRef<HTMLInputElement>(null);

  // What was typed before the page had woken up is in the box, but not yet known here.
  useEffect(() => {
    if (box.current) setText(box.current.value);
  }, [setText]);

  return (
    <form action={path} method="get" role="search" className={styles.find} aria-busy={isReading}>
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
        placeholder={such}
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
