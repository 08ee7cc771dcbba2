import type { CaseFields } from "../../casebook/caseFile";
import { normalWords } from "./normalWords";

type Outcome = NonNullable<CaseFields["outcome"]>;

/** Words for how a job ended, as job books have them (common practice). */
const words: Readonly<Record<Outcome, readonly string[]>> = {
  fixed: ["fixed", "done", "ok", "repaired", "mended", "ready", "completed", "finished", "works", "good"],
  improved: ["improved", "better", "partly fixed", "partly", "part fixed"],
  "not-fixed": ["not fixed", "not repaired", "no luck", "failed", "unrepaired", "no fix"],
  declined: [
    "declined",
    "refused",
    "customer declined",
    "not worth it",
    "not worth repairing",
    "returned undone",
    "no go",
  ],
};
const outcomes: readonly Outcome[] = ["fixed", "improved", "not-fixed", "declined"];

/** Reads how a job ended; undefined for words that do not tell. */
export function readOutcome(text: string): Outcome | undefined {
  const name = normalWords(text);
  return outcomes.find((outcome) => words[outcome].includes(name));
}
