import controls from "@/app/_components/controls.module.css";
import type { DraftProblem } from "@/lib/consult/writeUp/draftCase";
import { Field, problemProps } from "./Field";

type Props = Readonly<{
  name: string;
  label: string;
  value: string;
  onText: (text: string) => void;
  problem: DraftProblem | undefined;
  hint?: React.ReactNode;
  /** Lines to show; one is a plain field. */
  rows?: number;
  kind?: "text" | "day" | "number";
  list?: string;
  className?: string;
}>;

const isDay = (text: string) => text === "" || /^\d{4}-\d{2}-\d{2}$/.test(text);

/** A field to type in. A day that is none stays a text, for a day field would throw it away unseen. */
export function TextControl({
  name,
  label,
  value,
  onText,
  problem,
  hint,
  rows,
  kind = "text",
  list,
  className,
}: Props) {
  const common = {
    id: name,
    name,
    value,
    className: controls.field,
    autoComplete: "off",
    ...problemProps(name, problem),
  };
  return (
    <Field name={name} label={label} hint={hint} problem={problem} className={className}>
      {rows === undefined ? (
        <input
          {...common}
          type={kind === "day" && isDay(value) ? "date" : "text"}
          inputMode={kind === "number" ? "decimal" : undefined}
          list={list}
          onChange={(event) => onText(event.target.value)}
        />
      ) : (
        <textarea {...common} rows={rows} onChange={(event) => onText(event.target.value)} />
      )}
    </Field>
  );
}
