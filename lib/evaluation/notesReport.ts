import { z } from "zod";
import type { Bench } from "../consult/bench/bench";
import { consult } from "../consult/consult";
import { problemSchema } from "../consult/problem";
import { idSchema } from "../vocabulary/words";
import { type RankSummary, summariseRanks } from "./summariseRanks";

/** A bench note with the cause that was behind it: as its writer put it, and as the entries of the handbook that say the same. */
export const benchNoteSchema = problemSchema.safeExtend({
  toldCause: z.string().min(2),
  means: z.array(idSchema).min(1),
});
export type BenchNote = z.infer<typeof benchNoteSchema>;

/** At which ranks the causes behind some notes came, and which did not come first. */
export type NotesReport = RankSummary &
  Readonly<{
    missed: readonly Readonly<{ says: string; toldCause: string; rank: number | null; first: string }>[];
  }>;

/** Asks the bench about every note; a cause that is not listed has the rank null. */
export function notesReport(notes: readonly BenchNote[], bench: Bench): NotesReport {
  const asked = notes.map(({ toldCause, means, ...problem }) => {
    const { says = "" } = problem;
    const { causes } = consult(problem, bench);
    const at = causes.findIndex(({ id }) => means.includes(id));
    return { says, toldCause, rank: at < 0 ? null : at + 1, first: causes[0]?.id ?? "" };
  });
  return {
    ...summariseRanks(asked.map(({ rank }) => rank ?? Number.POSITIVE_INFINITY)),
    missed: asked.filter(({ rank }) => rank !== 1),
  };
}
