import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { openBench } from "@/lib/consult/bench/openBench";
import { benchNoteSchema, notesReport } from "@/lib/evaluation/notesReport";

/* Notes and causes by writers who had not seen the vocabulary, from common practice: see README.md in notes/. */
const open = (name: string) => {
  const file = new URL(`notes/${name}.json`, import.meta.url);
  return z.array(benchNoteSchema).parse(JSON.parse(readFileSync(file, "utf8")));
};
const { bench } = openBench({});

describe.each([
  ["free text", "benchNotes", 48],
  ["evidence in words, plugs and swaps", "benchProblems", 24],
])("bench notes written apart from the vocabulary: %s", (_, name, count) => {
  const notes = open(name);

  it("mean causes that the handbook has", () => {
    const unknown = notes.flatMap(({ means }) => means.filter((id) => !bench.vocabulary.causes.has(id)));
    expect(unknown).toEqual([]);
  });

  it("lead to the right cause first in six of ten at least, among the first three in 85 of a hundred", () => {
    const { n, hit1, hit3 } = notesReport(notes, bench);
    expect(n).toBe(count);
    expect(hit1).toBeGreaterThanOrEqual(0.6);
    expect(hit3).toBeGreaterThanOrEqual(0.85);
  });
});
