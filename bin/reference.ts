import { readFileSync } from "node:fs";
import { join } from "node:path";
import { z } from "zod";
import { type BenchNote, benchNoteSchema } from "@/lib/evaluation/notesReport";

/** A bench problem as data, with the same problem as a note. */
const toldTwiceSchema = benchNoteSchema.safeExtend({ note: z.string().min(2), means: z.array(z.string()) });
type ToldTwice = z.infer<typeof toldTwiceSchema>;

/** Reads a file of tests/reference by its path without the ending. */
export function readReference(name: string): unknown {
  return JSON.parse(readFileSync(join(import.meta.dirname, "../tests/reference", `${name}.json`), "utf8"));
}

/** Reads bench notes; those for whose cause the handbook has no entry are left out. */
export function readNotes(name: string): BenchNote[] {
  const notes = z
    .array(benchNoteSchema.safeExtend({ means: z.array(z.string()) }))
    .parse(readReference(name));
  return notes.filter(({ means }) => means.length > 0);
}

/** Reads the problems of tests/reference/problems, tuning or heldBack, as `readNotes` does. */
export function readProblems(name: "tuning" | "heldBack"): ToldTwice[] {
  const problems = z.array(toldTwiceSchema).parse(readReference(`problems/${name}`));
  return problems.filter(({ means }) => means.length > 0);
}

/** The same problem as free text alone. */
export const asNote = ({ instrument, note, toldCause, means }: ToldTwice): BenchNote =>
  benchNoteSchema.parse({ instrument, says: note, toldCause, means });

/** All problems from which it may be learned what each source counts for. */
export function problemsThatTeach(): BenchNote[] {
  const told = readProblems("tuning");
  return [
    ...readNotes("evidence/tuning"),
    ...readNotes("evidence/tuningNotes"),
    ...told,
    ...told.map(asNote),
  ];
}
