import Link from "next/link";
import controls from "@/app/_components/controls.module.css";
import { StateNote } from "@/app/_components/StateNote";
import { ForgetDraft } from "./ForgetDraft";

/** Says that a case was just saved, and lets the browser's copy of the draft go. */
export function SavedNote({ id, file }: Readonly<{ id: string; file: string }>) {
  return (
    <div className="unprinted" role="status">
      <ForgetDraft id={id} />
      <StateNote title={`Kept in the casebook as ${file}.`}>
        <p>The next search and the next job on the bench know it already.</p>
        <p className={controls.row}>
          <Link className={controls.plain} href="/add" prefetch={false}>
            Add another
          </Link>
        </p>
      </StateNote>
    </div>
  );
}
