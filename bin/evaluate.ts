import { readFileSync } from "node:fs";
import { parseArgs } from "node:util";
import { z } from "zod";
import { seededRandom } from "@/lib/diagnosis/learned/seededRandom";
import { stratifiedFolds } from "@/lib/diagnosis/learned/stratifiedFolds";
import { casebookReport } from "@/lib/evaluation/casebookReport";
import { engines } from "@/lib/evaluation/engines/engines";
import { crossValidate, leaveOneOutOfTable } from "@/lib/evaluation/evaluateTable";
import { evidenceReport, readProblemSchema } from "@/lib/evaluation/evidenceReport";
import { type BenchNote, notesReport } from "@/lib/evaluation/notesReport";
import { learnOpinionWeights } from "@/lib/evaluation/opinions/learnOpinionWeights";
import { learnReadingWeights } from "@/lib/evaluation/reading/learnReadingWeights";
import { phraseSchema, scorePhrases } from "@/lib/evaluation/scorePhrases";
import { reportOf } from "@/lib/evaluation/tableReport";
import { readFolds } from "@/lib/evaluation/tables/readFolds";
import { readTable } from "@/lib/evaluation/tables/readTable";
import { TableFault } from "@/lib/evaluation/tables/tableFault";
import { fail } from "./fail";
import { openContent } from "./openContent";
import { asNote, problemsThatTeach, readNotes, readProblems, readReference } from "./reference";

const usage =
  "usage: npm run -s evaluate -- --casebook | --notes | --evidence | --phrases | --opinions | --reading | FILE.arff|FILE.csv [--folds FILE.csv | --loo | --cv 10 --seed 1] " +
  `[--engine ${[...engines.keys()].join("|")}] [--class NAME]`;
const defaults = { cv: 10, seed: 1, engine: "pooled" } as const;

const { file, options } = readArguments();
const report =
  file !== undefined
    ? evaluateFile(file)
    : options.phrases
      ? evaluatePhrases()
      : options.notes
        ? evaluateNotes()
        : options.evidence
          ? evaluateEvidence()
          : options.opinions
            ? learnOpinionWeights(openContent(process.env).bench, problemsThatTeach())
            : options.reading
              ? learnReadingWeights(openContent(process.env).bench.reader)
              : evaluateCasebook();
process.stdout.write(`${JSON.stringify(report, null, 2)}\n`);

function readArguments() {
  try {
    const { values, positionals } = parseArgs({
      allowPositionals: true,
      options: {
        casebook: { type: "boolean" },
        notes: { type: "boolean" },
        evidence: { type: "boolean" },
        phrases: { type: "boolean" },
        opinions: { type: "boolean" },
        reading: { type: "boolean" },
        loo: { type: "boolean" },
        folds: { type: "string" },
        cv: { type: "string" },
        seed: { type: "string" },
        engine: { type: "string" },
        class: { type: "string" },
      },
    });
    const [name, ...rest] = positionals;
    const ways = [values.loo, values.folds, values.cv].filter((way) => way !== undefined);
    const dealsFolds = values.loo === undefined && values.folds === undefined;
    const isRight =
      values.casebook ||
      values.notes ||
      values.evidence ||
      values.phrases ||
      values.opinions ||
      values.reading
        ? Object.keys(values).length === 1 && name === undefined
        : name !== undefined &&
          ways.length <= 1 &&
          (dealsFolds || values.folds === undefined || !values.seed);
    if (!isRight || rest.length > 0) fail(2, usage);
    return { file: name, options: values };
  } catch {
    return fail(2, usage);
  }
}

function wholeNumber(text: string | undefined, otherwise: number, least: number): number {
  if (text === undefined) return otherwise;
  if (!/^\d{1,9}$/.test(text) || Number(text) < least) fail(2, usage);
  return Number(text);
}

function evaluateCasebook() {
  return casebookReport(openContent(process.env).bench);
}

/** Phrases that were looked at while tuning, and those that are held back: of these only the figures are shown. */
function evaluatePhrases() {
  const { reader } = openContent(process.env).bench;
  const scoreOf = (name: string) => {
    return scorePhrases(z.array(phraseSchema).parse(readReference(`phrases/${name}`)), reader);
  };
  const { misread: _, ...heldBack } = scoreOf("heldBack");
  return { tuning: scoreOf("tuning"), heldBack };
}

/** Notes and problems written apart from the handbook; of those that are held back only the figures are shown. */
function evaluateNotes() {
  const { bench } = openContent(process.env);
  const [tuning, heldBack] = [readProblems("tuning"), readProblems("heldBack")];
  const figures = (problems: readonly BenchNote[]) => ({
    ...notesReport(problems, bench),
    missed: undefined,
  });
  return {
    benchNotes: notesReport(readNotes("notes/benchNotes"), bench),
    benchProblems: notesReport(readNotes("notes/benchProblems"), bench),
    tuning: { problems: notesReport(tuning, bench), notes: notesReport(tuning.map(asNote), bench) },
    heldBack: { problems: figures(heldBack), notes: figures(heldBack.map(asNote)) },
  };
}

/** Evidence that was looked at while tuning, and what is held back: of it only the figures are shown. */
function evaluateEvidence() {
  const { bench } = openContent(process.env);
  const reportOn = (name: string) => {
    const problems = z.array(readProblemSchema).parse(readReference(`evidence/${name}`));
    const notes = readNotes(`evidence/${name}Notes`);
    return {
      evidence: evidenceReport(problems, bench.reader),
      problems: notesReport(
        problems.filter(({ means }) => means.length > 0),
        bench,
      ),
      notes: notesReport(notes, bench),
    };
  };
  const tuning = reportOn("tuning");
  const { evidence, problems, notes } = reportOn("heldBack");
  return {
    tuning,
    heldBack: {
      evidence,
      problems: { ...problems, missed: undefined },
      notes: { ...notes, missed: undefined },
    },
  };
}

function evaluateFile(name: string) {
  const engineName = options.engine ?? defaults.engine;
  const engine = engines.get(engineName);
  if (!engine) fail(2, usage);
  const foldCount = wholeNumber(options.cv, defaults.cv, 2);
  const seed = wholeNumber(options.seed, defaults.seed, 0);
  try {
    const table = readTable(readText(name), name, options.class);
    for (const note of table.notes) process.stderr.write(`${note}\n`);
    const { columns, labels, classes } = table;
    const data = { columns, labels, classCount: classes.length };
    const seconds = () => performance.now() / 1000;
    const deal = (count: number) =>
      stratifiedFolds(labels, Math.min(count, labels.length), seededRandom(seed));
    const evaluation = options.loo
      ? leaveOneOutOfTable(data, engine, deal, seconds)
      : crossValidate(
          data,
          engine,
          options.folds ? foldsFrom(options.folds, table) : deal(foldCount),
          seconds,
        );
    return { data: name, engine: engineName, ...reportOf(evaluation) };
  } catch (error) {
    if (error instanceof TableFault) return fail(1, error.message);
    throw error;
  }
}

/** The folds of the table's rows; the file gives them for all rows of the data, those of unknown class too. */
function foldsFrom(
  name: string,
  { labels, classes, rowInFile, rowCount }: ReturnType<typeof readTable>,
): Int32Array {
  const classAt = new Map([...rowInFile].map((row, at) => [row, classes[labels[at] ?? 0]]));
  const classOf = (row: number) => (options.class === undefined ? classAt.get(row) : undefined);
  const folds = readFolds(readText(name), name, { rowCount, classOf });
  return Int32Array.from(rowInFile, (row) => folds[row] ?? 0);
}

function readText(name: string): string {
  try {
    return readFileSync(name, "utf8");
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    throw new TableFault(name, 0, "", reason, "the name of a file that can be read");
  }
}
