"use client";

import { use } from "react";
import controls from "@/app/_components/controls.module.css";
import styles from "./SheetForm.module.css";
import { TypedContext } from "./TypedContext";

type Option = Readonly<{ id: string; label: string }>;
type Props = Readonly<{
  name: string;
  label: string;
  value?: string;
  /** What stands where nothing is chosen; without it something always is. */
  none?: string;
  options?: readonly Option[];
  groups?: readonly Readonly<{ label: string; options: readonly Option[] }>[];
  hint?: string;
  className?: string | undefined;
}>;

/** A field to choose in that comes back as it was chosen. */
export function TypedChoice(props: Props) {
  const { name, label, value = "", none, options = [], groups = [], hint, className } = props;
  const { form, typed } = use(TypedContext);
  const id = `${form} ${name}`.replaceAll(/[^a-z0-9]+/gi, "-");
  return (
    <div className={`${styles.field} ${className ?? ""}`}>
      <label htmlFor={id}>{label}</label>
      <select id={id} name={name} defaultValue={typed[name] ?? value} className={controls.field}>
        {none === undefined ? null : <option value="">{none}</option>}
        <Options options={options} />
        {groups.map((group) => (
          <optgroup key={group.label} label={group.label}>
            <Options options={group.options} />
          </optgroup>
        ))}
      </select>
      {hint ? <small>{hint}</small> : null}
    </div>
  );
}

function Options({ options }: Readonly<{ options: readonly Option[] }>) {
  return options.map(({ id, label }) => (
    <option key={id} value={id}>
      {label}
    </option>
  ));
}
