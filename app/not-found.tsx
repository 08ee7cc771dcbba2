import type { Metadata } from "next";
import Link from "next/link";
import controls from "./_components/controls.module.css";
import { StateNote } from "./_components/StateNote";

export const metadata: Metadata = { title: "Not here" };

/** An address that leads to nothing. */
export default function NotFound() {
  return (
    <main className="page" id="main">
      <h1>Nothing is kept here</h1>
      <StateNote level={2} title="The address may be old, or a letter may be missing.">
        <p>A case that was renamed or set aside can be found again in the casebook.</p>
        <p className={controls.row}>
          <Link className={controls.lead} href="/">
            To the bench
          </Link>
          <Link className={controls.plain} href="/casebook">
            Look in the casebook
          </Link>
        </p>
      </StateNote>
    </main>
  );
}
