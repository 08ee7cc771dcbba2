import { existsSync, readFileSync } from "node:fs";
import { z } from "zod";
import { contentFolders } from "@/lib/casebook/files/contentFolder";
import { gaugeReadings } from "@/lib/consult/gauge/gaugeReadings";
import { readingsSchema } from "@/lib/consult/gauge/readingsInput";
import { formatProblem } from "@/lib/document/contentProblem";
import { explainIssues } from "@/lib/document/explainIssues";
import { buildReader } from "@/lib/reading/reader";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";
import { fail } from "./fail";

const usage =
  "usage: npm run -s gauge -- FILE.json   (- reads standard input; a list of readings gives a list of answers)";
const [file, ...rest] = process.argv.slice(2);
if (file === undefined || rest.length > 0) fail(2, usage);

const data = readJson(file);
const inputs = Array.isArray(data)
  ? z.array(readingsSchema).min(1).safeParse(data)
  : readingsSchema.safeParse(data);
if (!inputs.success) {
  const place = { file: file === "-" ? "standard input" : file, lineOf: () => 0 };
  fail(1, explainIssues(inputs.error.issues, data, place).map(formatProblem).join("; "));
}
const reader = buildReader(loadVocabulary(contentFolders(process.env, existsSync).vocabulary).vocabulary);
const answer = Array.isArray(inputs.data)
  ? inputs.data.map((input) => gaugeReadings(input, reader))
  : gaugeReadings(inputs.data, reader);
process.stdout.write(`${JSON.stringify(answer, null, 2)}\n`);

function readJson(name: string): unknown {
  try {
    return JSON.parse(readFileSync(name === "-" ? 0 : name, "utf8"));
  } catch (error) {
    const where = name === "-" ? "standard input" : name;
    return fail(1, `${where}: ${error instanceof Error ? error.message : String(error)}; give a JSON file`);
  }
}
