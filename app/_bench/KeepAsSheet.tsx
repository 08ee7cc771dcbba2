"use client";

import { useActionState } from "react";
import { keepAsSheet } from "@/app/sheets/actions";
import controls from "../_components/controls.module.css";

type Props = Readonly<{
  /** Everything on the bench, as it stands in the address. */
  fields: readonly (readonly [string, string])[];
}>;

/** One tap keeps what is on the bench as the sheet of a job in hand. */
export function KeepAsSheet({ fields }: Props) {
  const [problem, keep, isKeeping] = useActionState(keepAsSheet, "");
  return (
    <form action={keep}>
      {fields.map(([name, value]) => (
        <input key={`${name} ${value}`} type="hidden" name={name} value={value} />
      ))}
      <button type="submit" className={controls.lead} disabled={isKeeping}>
        Keep as a bench sheet
      </button>
      {problem ? <p role="alert">Not kept. {problem}</p> : null}
    </form>
  );
}
