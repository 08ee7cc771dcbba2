import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { asNote, readProblems } from "@/bin/reference";
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

/* Harder ones, each told twice; causes by somebody who had not seen how they are weighed: see README.md in problems/. */
describe.each([
  ["tuning", 39],
  ["heldBack", 38],
] as const)("bench problems told as data and as a note, %s", (name, count) => {
  const problems = readProblems(name);

  it("mean causes that the handbook has", () => {
    expect(problems.flatMap(({ means }) => means.filter((id) => !bench.vocabulary.causes.has(id)))).toEqual(
      [],
    );
  });

  it.each([
    ["data", problems],
    ["a note", problems.map(asNote)],
  ])("lead to the right cause first in six of ten, in three in 85 of a hundred, told as %s", (_, told) => {
    const { n, hit1, hit3 } = notesReport(told, bench);
    expect(n).toBe(count);
    expect(hit1).toBeGreaterThanOrEqual(0.6);
    expect(hit3).toBeGreaterThanOrEqual(0.85);
  });
});
