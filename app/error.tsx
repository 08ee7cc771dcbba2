"use client";

import controls from "./_components/controls.module.css";
import { StateNote } from "./_components/StateNote";

/** Something failed while a page was made. What was typed is in the address, so trying again loses nothing. */
export default function ErrorPage({ retry }: Readonly<{ error: unknown; retry: () => void }>) {
  return (
    <main className="page" id="main">
      <h1>No answer just now</h1>
      <StateNote level={2} title="Something went wrong while this page was being made." tone="fail">
        <p>What you typed is kept in the address of this page. Nothing in the casebook was changed.</p>
        <p className={controls.row}>
          <button type="button" className={controls.lead} onClick={() => retry()}>
            Ask again
          </button>
          <a className={controls.plain} href="/">
            Start on an empty bench
          </a>
        </p>
      </StateNote>
    </main>
  );
}
