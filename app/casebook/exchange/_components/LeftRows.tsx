import controls from "@/app/_components/controls.module.css";
import { Folded } from "./Folded";

/** Rows that were not taken in, as a table to copy, so that none is lost; where they are too many the file itself has them. */
export function LeftRows({ text }: Readonly<{ text: string }>) {
  if (text === "") return <p>They are too many to lay out here: put them right in the file itself.</p>;
  return (
    <Folded label="These rows as a table, to put right and bring in again">
      <label htmlFor="left-rows">Copy them, put them right, and paste them in step 1</label>
      <textarea id="left-rows" readOnly rows={6} className={controls.field} value={text} />
    </Folded>
  );
}
