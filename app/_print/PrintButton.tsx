"use client";

import controls from "@/app/_components/controls.module.css";

/** Prints the page; the browser's own menu does the same. */
export function PrintButton() {
  return (
    <button type="button" className={controls.plain} onClick={() => window.print()}>
      Print it
    </button>
  );
}
