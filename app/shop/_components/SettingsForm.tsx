"use client";

import { startTransition, useActionState } from "react";
import controls from "@/app/_components/controls.module.css";
import { keepShop } from "../actions";
import styles from "./SettingsForm.module.css";

type Props = Readonly<{ values: Readonly<Record<"name" | "hourCost" | "margin", string>> }>;

const fields = [
  {
    name: "hourCost",
    label: "What an hour at the bench costs the shop",
    hint: "Wages, rent, tools and supplies, in what you are paid in",
    isNumber: true,
  },
  {
    name: "margin",
    label: "Margin, in 100 of the price",
    hint: "What is to be left over on average: 25 means a quarter of the price, 0 to 90",
    isNumber: true,
  },
  { name: "name", label: "Name of the shop", hint: "Stands at the head of what is printed", isNumber: false },
] as const;

/** What the shop reckons with, to be edited; what does not hold stays as it was typed. */
export function SettingsForm({ values }: Props) {
  const [{ problems, typed }, send, isSending] = useActionState(keepShop, { problems: [], typed: undefined });
  function submit(event: React.SubmitEvent<HTMLFormElement>) {
    // Sent by hand, because a form that is sent by its action is emptied afterwards.
    event.preventDefault();
    const data = new FormData(event.currentTarget);
    startTransition(() => send(data));
  }
  return (
    <form action={send} onSubmit={submit} noValidate aria-busy={isSending} className={styles.settings}>
      {fields.map(({ name, label, hint, isNumber }) => {
        const wrong = problems.filter(({ field }) => field === name);
        return (
          <div key={name} className={styles.field}>
            <label htmlFor={name}>{label}</label>
            <input
              id={name}
              name={name}
              defaultValue={typed?.[name] ?? values[name]}
              className={controls.field}
              inputMode={isNumber ? "decimal" : undefined}
              autoComplete="off"
              aria-invalid={wrong.length > 0}
              aria-describedby={`${name}-hint`}
            />
            <small id={`${name}-hint`}>
              {hint}
              {wrong.map(({ received, expected }) => (
                <b key={received} className={styles.wrong}>
                  Found {received}; write {expected}.
                </b>
              ))}
            </small>
          </div>
        );
      })}
      {problems.length > 0 ? (
        <p role="alert" className={styles.wrong}>
          Not kept.{" "}
          {problems
            .filter(({ field }) => !fields.some(({ name }) => name === field))
            .map(({ received, expected }) => `Found ${received}; write ${expected}.`)
            .join(" ")}
        </p>
      ) : null}
      <p>
        <button type="submit" className={controls.lead}>
          Keep it so
        </button>
      </p>
    </form>
  );
}
