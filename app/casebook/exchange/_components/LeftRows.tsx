import controls from "@/app/_components/controls.module.css";

/** Rows that were not taken in, as a table to copy, so that none is lost. */
export function LeftRows({ text }: Readonly<{ text: string }>) {
  return (
    <>
      <label htmlFor="left-rows">Copy them, put them right, and paste them in step 1</label>
      <textarea id="left-rows" readOnly rows={6} className={controls.field} value={text} />
    </>
  );
}
