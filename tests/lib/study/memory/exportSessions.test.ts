import { parse } from "csv-parse/sync";
import { describe, expect, it } from "vitest";
import type { Learner } from "@/lib/casebook/learners/learnerFile";
import { sessionsAsCsv, sessionsAsJson } from "@/lib/study/memory/exportSessions";
import { session, went } from "./sessions";

const learner = (name: string): Learner => ({
  id: "a",
  name,
  demo: false,
  since: "2026-03-01",
  sessions: [
    session({
      said: [
        { cause: "casing-dented", sure: 0.6 },
        { cause: "piston-bent", sure: 0.2 },
      ],
    }),
    session({ case: "24-002", day: "2026-03-02", ...went.missed, lesson: "first" }),
  ],
  notes: "",
  file: "a.md",
});

describe("sessions to take along", () => {
  it("are read back from the table, word for word, by a reader of CSV that is not ours", () => {
    const rows: unknown = parse(sessionsAsCsv([learner('Åsa "Quick", of the shop')]), { columns: true });
    expect(rows).toEqual([
      {
        learner: "a",
        name: 'Åsa "Quick", of the shop',
        demo: "false",
        day: "2026-03-01",
        case: "24-001",
        went: "got it",
        verdict: "right",
        said: "casing-dented 0.6; piston-bent 0.2",
        score: "0.164",
        checks: "3",
        minutes: "10",
        atStakeMinutes: "1",
        recordMinutes: "12",
        recordAtStakeMinutes: "1",
        tooSoon: "0",
        lesson: "",
        comesBack: "2026-03-04",
      },
      expect.objectContaining({ case: "24-002", went: "missed", lesson: "first", comesBack: "2026-03-03" }),
    ]);
  });

  it("have their head where there is nobody, and end every line as RFC 4180 says", () => {
    expect(sessionsAsCsv([])).toMatch(/^learner,name,.*,comesBack\r\n$/);
  });

  it("are no formulas to a spreadsheet, whatever somebody calls themselves", () => {
    for (const name of ["=1+1", "+1", "-1", "@x"]) {
      const rows: unknown = parse(sessionsAsCsv([learner(name)]), { columns: true });
      expect(rows).toMatchObject([{ name: `'${name}` }, { name: `'${name}` }]);
    }
  });

  it("stand in JSON by learner", () => {
    expect(JSON.parse(sessionsAsJson([learner("A")]))).toMatchObject([
      { learner: "a", name: "A", sessions: [{ case: "24-001", went: "got it" }, { case: "24-002" }] },
    ]);
  });
});
