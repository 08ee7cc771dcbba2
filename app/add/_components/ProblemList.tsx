import { forwardRef } from "react";
import controls from "@/app/_components/controls.module.css";
import { StateNote } from "@/app/_components/StateNote";
import type { Draft, DraftProblem } from "@/lib/consult/writeUp/draftCase";
import styles from "./ProblemList.module.css";

type Props = Readonly<{ view: Draft["view"]; problems: readonly DraftProblem[] }>;

/** Everything that keeps the case from being saved, each leading to its field or naming its line. */
export const ProblemList = forwardRef<HTMLDivElement, Props>(function ProblemList({ view, problems }, box) {
  if (problems.length === 0) {
    return (
      <div ref={box} tabIndex={-1} id="problems" role="status">
        <StateNote title="Nothing is wrong with it: it can be saved.">{null}</StateNote>
      </div>
    );
  }
  const count = problems.length === 1 ? "One thing is" : `${problems.length} things are`;
  return (
    <div ref={box} tabIndex={-1} id="problems" role="status">
      <StateNote title={`${count} still to be put right. Nothing typed is lost.`} tone="warn">
        <ul className={styles.list}>
          {problems.map((problem) => {
            const { line, field, received, expected, control } = problem;
            const words = `found ${received}; write ${expected}`;
            return (
              <li key={`${line} ${field} ${words}`}>
                {view === "form" && control ? (
                  <a className={controls.link} href={`#${control}`}>
                    {field}
                  </a>
                ) : (
                  <b>{[line > 0 ? `Line ${line}` : "", field].filter(Boolean).join(", ") || "The file"}</b>
                )}
                : {words}
              </li>
            );
          })}
        </ul>
      </StateNote>
    </div>
  );
});
