import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { openBench } from "@/lib/consult/openBench";
import { benchNoteSchema, notesReport } from "@/lib/evaluation/notesReport";

/* Notes and causes by a writer who had not seen the vocabulary, from common practice: see README.md in notes/. */
const file = new URL("notes/benchNotes.json", import.meta.url);
const notes = z.array(benchNoteSchema).parse(JSON.parse(readFileSync(file, "utf8")));
const { bench } = openBench({});

describe("bench notes in shop language, written apart from the vocabulary", () => {
  it("mean causes that the handbook has", () => {
    const unknown = notes.flatMap(({ means }) => means.filter((id) => !bench.vocabulary.causes.has(id)));
    expect(unknown).toEqual([]);
  });

  it("lead to the right cause first in six of ten at least, among the first three in 85 of a hundred", () => {
    const { n, hit1, hit3 } = notesReport(notes, bench);
    expect(n).toBe(48);
    expect(hit1).toBeGreaterThanOrEqual(0.6);
    expect(hit3).toBeGreaterThanOrEqual(0.85);
  });
});
