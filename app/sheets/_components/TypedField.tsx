"use client";

import { use } from "react";
import controls from "@/app/_components/controls.module.css";
import styles from "./SheetForm.module.css";
import { TypedContext } from "./TypedContext";

type Props = Readonly<{
  name: string;
  label: string;
  value?: string;
  /** Lines to show; one is a plain field. */
  rows?: number;
  kind?: "text" | "day" | "number";
  list?: string;
  /** What stands for a field that is left blank. */
  blank?: string | undefined;
  hint?: string;
  className?: string | undefined;
}>;

/** A field to type in that comes back as it was typed. */
export function TypedField({
  name,
  label,
  value = "",
  rows,
  kind = "text",
  list,
  blank,
  hint,
  className,
}: Props) {
  const { form, typed } = use(TypedContext);
  const id = `${form} ${name}`.replaceAll(/[^a-z0-9]+/gi, "-");
  const common = {
    id,
    name,
    defaultValue: typed[name] ?? value,
    className: controls.field,
    autoComplete: "off",
    placeholder: blank,
    "aria-describedby": hint ? `${id}-hint` : undefined,
  };
  return (
    <div className={`${styles.field} ${className ?? ""}`}>
      <label htmlFor={id}>{label}</label>
      {rows === undefined ? (
        <input
          {...common}
          type={kind === "day" ? "date" : "text"}
          inputMode={kind === "number" ? "decimal" : undefined}
          list={list}
        />
      ) : (
        <textarea {...common} rows={rows} />
      )}
      {hint ? <small id={`${id}-hint`}>{hint}</small> : null}
    </div>
  );
}
