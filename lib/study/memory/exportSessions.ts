import { stringify } from "csv-stringify/sync";
import type { Learner } from "../../casebook/learners/learnerFile";
import { sessionRows } from "./sessionRows";

/** The columns, in the order of `SessionRow`, also where there is no row to take them from. */
const columns = [
  "learner",
  "name",
  "demo",
  "day",
  "case",
  "went",
  "verdict",
  "said",
  "score",
  "checks",
  "minutes",
  "atStakeMinutes",
  "recordMinutes",
  "recordAtStakeMinutes",
  "tooSoon",
  "lesson",
  "comesBack",
] as const;

/**
 * Writes learners' sessions as a table, a session a row. What a spreadsheet would take for a formula is written so that it
 * stays words: a name is typed by anybody.
 *
 * Source of the form: RFC 4180.
 */
export const sessionsAsCsv = (learners: readonly Learner[]): string =>
  stringify(learners.flatMap(sessionRows), {
    header: true,
    columns: [...columns],
    cast: { boolean: String },
    escape_formulas: true,
    record_delimiter: "\r\n",
  });

/** Writes learners' sessions as JSON: each learner with their sessions. */
export const sessionsAsJson = (learners: readonly Learner[]): string =>
  `${JSON.stringify(
    learners.map((learner) => ({
      learner: learner.id,
      name: learner.name,
      demo: learner.demo,
      since: learner.since,
      sessions: sessionRows(learner).map(({ learner: _id, name: _name, demo: _demo, ...row }) => row),
    })),
    null,
    1,
  )}\n`;
