import type { ReactNode } from "react";
import type { DraftProblem } from "@/lib/consult/writeUp/draftCase";
import styles from "./Field.module.css";

type Props = Readonly<{
  name: string;
  label: string;
  hint?: ReactNode;
  problem: DraftProblem | undefined;
  className?: string | undefined;
  children: ReactNode;
}>;

/** The id of a control's problem, for the control to point at. */
const problemId = (name: string) => `problem-${name}`;

/** What a control says of itself to those who cannot see its problem beside it. */
export const problemProps = (name: string, problem: DraftProblem | undefined) =>
  problem ? { "aria-invalid": true, "aria-describedby": problemId(name) } : {};

/** A control with its name over it, and under it what is wrong with what was typed. */
export function Field({ name, label, hint, problem, className, children }: Props) {
  return (
    <div
      className={className ? `${styles.field} ${className}` : styles.field}
      data-wrong={problem ? "" : undefined}
    >
      <label htmlFor={name}>{label}</label>
      {children}
      {problem ? (
        <p id={problemId(name)} className={styles.wrong}>
          Found {problem.received}; write {problem.expected}
        </p>
      ) : null}
      {hint ? <div className={styles.hint}>{hint}</div> : null}
    </div>
  );
}
