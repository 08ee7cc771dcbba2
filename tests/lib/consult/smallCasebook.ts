import { type Case, caseSchema } from "@/lib/casebook/caseFile";
import type { Casebook } from "@/lib/casebook/loadCasebook";

/** A case file as it would be read, from the few fields that a test cares for. */
export function smallCase(id: string, fields: object, story = ""): Case {
  const parsed = caseSchema.parse({
    id,
    title: `Case ${id}`,
    status: "closed",
    instrument: "trumpet",
    received: "2026-01-02",
    closed: "2026-01-03",
    complaint: "It does not work.",
    outcome: "fixed",
    minutes: 30,
    ...fields,
  });
  return { ...parsed, story, file: `${id}.md` };
}

export const smallCasebook = (cases: readonly Case[]): Casebook => ({
  cases: new Map(cases.map((kase) => [kase.id, kase])),
  problems: [],
});

const root = (cause: string) => [{ cause, role: "root" }];
const found = (check: string, outcome: string, part?: string) => ({
  check,
  found: outcome,
  ...(part === undefined ? {} : { part }),
});

export const dentCase = smallCase(
  "1-1",
  {
    complaint: "Second valve hangs since the case fell down the stairs.",
    path: [
      found("travel", "hangs", "valve 2"),
      found("travel", "free", "valve 1"),
      found("casing-look", "dented", "casing 2"),
      { repair: "press-out", part: "casing 2", result: "fixed" },
      found("travel", "free", "valve 2"),
    ],
    causes: root("dent"),
    minutes: 60,
    harms: [{ repair: "press-out", what: "Wall went out too far.", paidBy: "shop" }],
    lessons: ["Gauge before pressing."],
  },
  "The wall stood in by a hair.",
);
export const dirtCase = smallCase("1-2", {
  complaint: "All three drag and smell of old oil.",
  path: [found("deposits", "lime", "piston 1"), found("travel", "drags", "valve 1")],
  causes: root("dirt"),
  received: "2026-02-01",
  closed: "2026-02-01",
});
export const springCase = smallCase("1-3", {
  complaint: "Third valve comes up slowly.",
  path: [found("spring-look", "short", "spring 3"), found("travel", "drags", "valve 3")],
  causes: [
    { cause: "weak-spring", role: "root" },
    { cause: "dirt", role: "contributing" },
  ],
  minutes: 15,
});
export const secondDentCase = smallCase("1-4", {
  complaint: "First valve hangs.",
  path: [
    found("travel", "hangs", "valve 1"),
    found("knock", "dropped"),
    { repair: "press-out", result: "fixed" },
  ],
  causes: root("dent"),
  received: "2026-03-01",
  closed: "2026-03-02",
  minutes: 90,
  harms: [{ repair: "press-out", what: "Lacquer marked by the mandrel.", paidBy: "shop" }],
});
export const smallCases = [dentCase, dirtCase, springCase, secondDentCase];
