"use client";

import { useActionState } from "react";
import controls from "@/app/_components/controls.module.css";
import { sayWho } from "../actions";
import styles from "./Who.module.css";

/** A name, and one goes on with its file. On the client so that what is wrong with a name is said beside it. */
export function WhoForm() {
  const [problem, go, isGoing] = useActionState(sayWho, "");
  return (
    <form action={go} className={styles.form}>
      <label htmlFor="name">Your name</label>
      <input
        id="name"
        name="name"
        className={controls.field}
        maxLength={60}
        autoComplete="name"
        aria-describedby={problem ? "name-problem" : undefined}
      />
      <button type="submit" className={controls.plain} disabled={isGoing}>
        Go on
      </button>
      {problem ? (
        <p id="name-problem" role="alert">
          {problem}
        </p>
      ) : null}
    </form>
  );
}
