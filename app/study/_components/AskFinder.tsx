"use client";

import { useState } from "react";
import controls from "@/app/_components/controls.module.css";
import { matchesWords } from "@/lib/text/matchesWords";
import styles from "./AskList.module.css";
import { AskPart } from "./AskPart";
import type { AskGroup } from "./askGroups";

type Props = Readonly<{
  groups: readonly AskGroup[];
  /** The session, carried along where the words go to the server. */
  fields: readonly (readonly [string, string])[];
  find: string;
  from: string | null;
}>;

/** So few checks need not be folded away. */
const seenAtOnce = 12;

/** The checks part by part, and a line that leaves only those whose words are typed. On the client so that it does so as one types. */
export function AskFinder({ groups, fields, find, from }: Props) {
  const [typed, setTyped] = useState(find);
  const isLooking = typed.trim() !== "";
  const shown = groups
    .map((group) => ({ ...group, checks: group.checks.filter(({ words }) => matchesWords(words, typed)) }))
    .filter(({ checks }) => checks.length > 0);
  const count = shown.reduce((sum, { checks }) => sum + checks.length, 0);
  return (
    <>
      <form action="/study#ask" method="get" className={styles.find} role="search" aria-label="Checks">
        {fields.map(([name, value], at) => (
          <input key={`${at} ${name}`} type="hidden" name={name} value={value} />
        ))}
        <label htmlFor="find">Find a check</label>
        <input
          id="find"
          name="find"
          type="search"
          className={controls.field}
          value={typed}
          onChange={({ target }) => setTyped(target.value)}
          autoComplete="off"
          placeholder="bore, spring, pad…"
        />
        <noscript>
          <button type="submit" className={controls.plain}>
            Find
          </button>
        </noscript>
        <a className={styles.toAnswer} href="#answer">
          To your answer
        </a>
      </form>
      <p className="heard" role="status">
        {isLooking ? `${count} ${count === 1 ? "check" : "checks"}` : ""}
      </p>
      {shown.length === 0 ? (
        <p className="soft">No check has these words. Try a part, or fewer words.</p>
      ) : null}
      {shown.map((group) => (
        <AskPart
          key={group.id}
          group={group}
          isOpen={isLooking || group.id === from || (count <= seenAtOnce && from === null)}
        />
      ))}
    </>
  );
}
