import type { Case } from "./caseFile";

/** Jobs in which the lessons of a past case held, and those in which they did not, by their ids in the casebook's order. */
export type LessonStanding = Readonly<{ held: readonly string[]; failed: readonly string[] }>;

/** Tells by case what later jobs said of its lessons; cases of which nothing was said are not in it. */
export function lessonStandings(cases: Iterable<Case>): ReadonlyMap<string, LessonStanding> {
  const standings = new Map<string, LessonStanding>();
  for (const { id, status, like = [] } of cases) {
    if (status !== "closed") continue;
    for (const { case: past, lesson } of like) {
      if (lesson === undefined || past === id) continue;
      const { held, failed } = standings.get(past) ?? { held: [], failed: [] };
      standings.set(
        past,
        lesson === "held" ? { held: [...held, id], failed } : { held, failed: [...failed, id] },
      );
    }
  }
  return standings;
}
