import type { ReactNode } from "react";
import type { Progress } from "@/lib/study/memory/progressBy";
import type { ProgressRow } from "./ProgressTable";

/** Progress as the table shows it. */
export const progressRows = (
  progress: readonly Progress[],
  labelOf: (key: string) => ReactNode,
): ProgressRow[] =>
  progress.map(({ key, jobs, went, due }) => ({
    key,
    label: labelOf(key),
    jobs,
    missed: went.missed,
    nearly: went.nearly,
    got: went["got it"] + went["got it cleanly"],
    due,
  }));
