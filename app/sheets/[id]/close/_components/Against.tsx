"use client";

import { use, useEffect, useRef, useState } from "react";
import { StateNote } from "@/app/_components/StateNote";
import { TypedContext } from "@/app/sheets/_components/TypedContext";

/** What was found on the job that the handbook says is rarely or never met with a cause. */
type Findings = Readonly<{
  label: string;
  findings: readonly Readonly<{ words: string; often: "rarely" | "never" }>[];
}>;
type Props = Readonly<{
  /** Names of the fields in which causes are chosen, and what stands in them at first. */
  watched: readonly string[];
  chosen: readonly string[];
  against: Readonly<Record<string, Findings>>;
}>;

/** Where the findings speak against a chosen cause; without JavaScript those that were sent last, or else proposed. */
export function Against({ watched, chosen, against }: Props) {
  const { typed } = use(TypedContext);
  const [causes, setCauses] = useState(watched.map((name, at) => typed[name] ?? chosen[at] ?? ""));
  const box = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const form = box.current?.closest("form");
    if (!form) return;
    const look = () => {
      const data = new FormData(form);
      setCauses(watched.map((name) => String(data.get(name) ?? "")));
    };
    // After the kept copy of what was typed has come back.
    const first = requestAnimationFrame(look);
    form.addEventListener("change", look);
    return () => {
      cancelAnimationFrame(first);
      form.removeEventListener("change", look);
    };
  }, []);
  const spoken = [...new Set(causes)].flatMap((id) => against[id] ?? []);
  return (
    <div ref={box} aria-live="polite">
      {spoken.map(({ label, findings }) => (
        <StateNote key={label} title={`The handbook speaks against: ${label.toLowerCase()}`} tone="warn">
          {findings.map(({ words, often }) => (
            <p key={words}>
              {words}. It is {often === "never" ? "never" : "rarely"} met with it.
            </p>
          ))}
          <p>If it was that all the same, the story should say how: such a case teaches most.</p>
        </StateNote>
      ))}
    </div>
  );
}
