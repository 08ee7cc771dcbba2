import type { RevisedCase } from "@/lib/casebook/keeping/reviseCase";
import type { ContentProblem } from "@/lib/document/contentProblem";

/** What came back from a wish that was not met: what is wrong, or both versions, and all that was typed. */
export type SheetAnswer = Readonly<{
  /** The hash of the version that it was asked about. */
  about: string;
  problems: readonly ContentProblem[];
  conflict: Readonly<{ mine: string; theirs: string; theirHash: string }> | undefined;
  typed: Readonly<Record<string, string>>;
}>;

export const nothingAsked: SheetAnswer = { about: "", problems: [], conflict: undefined, typed: {} };

/** Lays out for the page why a wish was not met. */
export function answerOf(revised: Exclude<RevisedCase, { kind: "saved" }>, data: FormData): SheetAnswer {
  const typed = Object.fromEntries(
    [...data].flatMap(([name, value]) =>
      typeof value === "string" && !name.startsWith("$") && name !== "base" && name !== "text"
        ? [[name, value]]
        : [],
    ),
  );
  const about = typed.baseHash ?? "";
  return revised.kind === "conflict"
    ? { about, problems: [], conflict: revised, typed }
    : { about, problems: revised.problems, conflict: undefined, typed };
}

/** Whether an answer is still about what stands on the page: the version that was asked about, or the one in its way. */
export const isAbout = ({ about, conflict }: SheetAnswer, hash: string) =>
  about === hash || conflict?.theirHash === hash;
