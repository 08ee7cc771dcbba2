import { readFileSync } from "node:fs";
import { z } from "zod";
import { consult } from "@/lib/consult/consult";
import { problemSchema } from "@/lib/consult/problem";
import { unknownKeys } from "@/lib/consult/unknownKeys";
import { formatProblem } from "@/lib/document/contentProblem";
import { explainIssues } from "@/lib/document/explainIssues";
import { fail } from "./fail";
import { openContent } from "./openContent";

const usage =
  "usage: npm run -s consult -- [--plan] FILE.json   (- reads standard input; a list of problems gives a list of answers; --plan adds the plan of checks and repairs)";
const given = process.argv.slice(2);
const plan = given.includes("--plan");
const [file, ...rest] = given.filter((word) => word !== "--plan");
if (file === undefined || file.startsWith("--") || rest.length > 0) fail(2, usage);

const data = readJson(file);
const problems = Array.isArray(data) ? z.array(problemSchema).safeParse(data) : problemSchema.safeParse(data);
if (!problems.success) {
  const place = { file: file === "-" ? "standard input" : file, lineOf: () => 0 };
  fail(1, explainIssues(problems.error.issues, data, place).map(formatProblem).join("; "));
}
for (const words of unknownKeys(data))
  process.stderr.write(`${file === "-" ? "standard input" : file}: ${words}\n`);
const { bench } = openContent(process.env);
const answer = Array.isArray(problems.data)
  ? problems.data.map((problem) => consult(problem, bench, { plan }))
  : consult(problems.data, bench, { plan });
process.stdout.write(`${JSON.stringify(answer, null, 2)}\n`);

function readJson(name: string): unknown {
  try {
    const text = readFileSync(name === "-" ? 0 : name, "utf8");
    return JSON.parse(text);
  } catch (error) {
    return fail(1, `${name}: ${error instanceof Error ? error.message : String(error)}; give a JSON file`);
  }
}
