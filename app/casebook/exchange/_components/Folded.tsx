import type { ReactNode } from "react";
import controls from "@/app/_components/controls.module.css";

/** Something shut until it is asked for. */
export function Folded({ label, children }: Readonly<{ label: string; children: ReactNode }>) {
  return (
    <details>
      <summary className={controls.opens}>{label}</summary>
      {children}
    </details>
  );
}
