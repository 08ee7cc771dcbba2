import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { z } from "zod";
import { openBench } from "@/lib/consult/bench/openBench";
import { evidenceReport, readProblemSchema } from "@/lib/evaluation/evidenceReport";
import { benchNoteSchema, notesReport } from "@/lib/evaluation/notesReport";

/* Bench problems written and put into the handbook's terms apart from the reader, from common practice: see README.md in evidence/. */
const open = <T>(name: string, schema: z.ZodType<T>) =>
  z.array(schema).parse(JSON.parse(readFileSync(new URL(`evidence/${name}.json`, import.meta.url), "utf8")));
const { bench } = openBench({});

describe.each(["tuning", "heldBack"])("bench problems with evidence in words, %s", (name) => {
  const problems = open(name, readProblemSchema);

  it("mean causes and findings that the handbook has", () => {
    const { causes, checks } = bench.vocabulary;
    const unknown = problems.flatMap(({ means, evidenceMeans }) => [
      ...means.filter((id) => !causes.has(id)),
      ...evidenceMeans.flat().filter((finding) => {
        const [check = "", outcome] = finding.split(" ");
        return !checks.get(check)?.outcomes.some(({ id }) => id === outcome);
      }),
    ]);
    expect(unknown).toEqual([]);
  });

  it("are read piece by piece: seven in ten of what is taken to be something are right, the likeliest meaning of six in ten", () => {
    const { pieces, likeliestRight, read } = evidenceReport(problems, bench.reader);
    expect(pieces).toBeGreaterThan(150);
    expect(read.right / (read.right + read.wrong)).toBeGreaterThanOrEqual(0.7);
    expect(likeliestRight).toBeGreaterThanOrEqual(0.58);
  });

  it("lead to the right cause first in six of ten at least, among the first three in 85 of a hundred, as notes and as data", () => {
    const asData = problems.filter(({ means }) => means.length > 0);
    for (const asked of [asData, open(`${name}Notes`, benchNoteSchema)]) {
      const { n, hit1, hit3 } = notesReport(asked, bench);
      expect(n).toBeGreaterThanOrEqual(39);
      expect(hit1).toBeGreaterThanOrEqual(0.6);
      expect(hit3).toBeGreaterThanOrEqual(0.85);
    }
  });
});
