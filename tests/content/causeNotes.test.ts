import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { openBench } from "@/lib/consult/bench/openBench";

const { vocabulary } = openBench({}).bench;
const notes = [...vocabulary.causeNotes].flatMap(([cause, told]) => told.map((note) => ({ cause, note })));

const wordsOf = (text: string) => text.toLowerCase().match(/[a-z0-9#']+/g) ?? [];
const runsOf = (text: string, length: number) => {
  const words = wordsOf(text);
  return words.slice(length - 1).map((_, at) => words.slice(at, at + length).join(" "));
};

/** The bench notes and problems by which the engine is judged, each as one text. */
const judged = [
  "notes/benchNotes",
  "notes/benchProblems",
  "evidence/tuning",
  "evidence/tuningNotes",
  "evidence/heldBack",
  "evidence/heldBackNotes",
  "problems/tuning",
  "problems/heldBack",
].flatMap((name) =>
  z
    .array(
      z.object({
        says: z.string(),
        note: z.string().default(""),
        evidence: z.array(z.object({ check: z.string(), found: z.string() })).default([]),
      }),
    )
    .parse(JSON.parse(readFileSync(`tests/reference/${name}.json`, "utf8")))
    .map(({ says, note, evidence }) =>
      [says, note, ...evidence.map(({ check, found }) => `${check} ${found}`)].join(" | "),
    ),
);

describe("the notes on causes", () => {
  it("tell every cause fifty times at least", () => {
    const few = [...vocabulary.causes.keys()].filter(
      (id) => (vocabulary.causeNotes.get(id)?.length ?? 0) < 50,
    );
    expect(few).toEqual([]);
  });

  it("come once each", () => {
    const said = notes.map(({ note }) => wordsOf(note).join(" "));
    const seen = new Set<string>();
    expect(said.filter((one) => seen.size === seen.add(one).size)).toEqual([]);
  });

  it("were not taken from the problems by which the engine is judged: ten words on end are in none of both", () => {
    const runs = new Set(notes.flatMap(({ note }) => runsOf(note, 10)));
    expect(judged.length).toBeGreaterThan(300);
    expect(judged.filter((text) => runsOf(text, 10).some((run) => runs.has(run))).length).toBe(0);
  });

  it("tell of the evidence and seldom of the cause by its name", () => {
    const named = notes.filter(({ cause, note }) => {
      const label = vocabulary.causes.get(cause)?.label.toLowerCase() ?? "";
      return note.toLowerCase().includes(label);
    });
    expect(named.length / notes.length).toBeLessThan(0.01);
  });

  it("name no maker, person or place: capitals inside a sentence are days, feasts, tongues, notes and kinds of instrument", () => {
    const innocent =
      /^([A-Z]+|[A-G]s|[A-Z]{1,2}b|[A-Z][a-z]?\d*|(Mon|Tue|Wed|Thu|Fri|Sat|Sun)(days?|s)?|\w+days?|\w+ber|January|February|March|April|May|June|July|August|(Jan|Feb|Aug|Sept|Oct|Nov|Dec)|Easter|Xmas|Christmas\w*|English|French|German|American|Czech|Vienna|Wagner|Boehm|Albert|Grandma|Dad|Conserv|Middle|Mass|Marching)$/;
    const names = notes.flatMap(({ note }) =>
      [...note.matchAll(/(?<=[a-z,;] )\p{Lu}[\p{L}'’]*/gu)]
        .map(([word]) => word.replace(/['’].*$/, ""))
        .filter((word) => !innocent.test(word)),
    );
    expect([...new Set(names)]).toEqual([]);
  });
});
