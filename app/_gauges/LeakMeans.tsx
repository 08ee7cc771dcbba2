import { leakWords } from "@/lib/gauging/fits/leakWords";
import type { FoundLeak } from "@/lib/gauging/fits/readLeak";
import part from "./Part.module.css";

/** What a leak comes to, in words. */
export const LeakMeans = ({ leak }: Readonly<{ leak: Extract<FoundLeak, { kind: "leak" }> }>) => (
  <ul className={part.means}>
    {leakWords(leak).map((words) => (
      <li key={words}>{words}</li>
    ))}
  </ul>
);
