import { resolve } from "node:path";
import { benchAddCase } from "@/benchmarks/addCase";
import { benchBuildIndexes } from "@/benchmarks/buildIndexes";
import { benchConsult } from "@/benchmarks/consult";
import { readCorpus } from "@/benchmarks/corpus";
import { benchEngine } from "@/benchmarks/engine";
import { benchLoad } from "@/benchmarks/load";
import { readMemory } from "@/benchmarks/measure";
import { benchMemory } from "@/benchmarks/memory";
import { benchPatterns } from "@/benchmarks/patterns";
import { seedRandom } from "@/benchmarks/random";
import type { Result } from "@/benchmarks/result";
import { benchFillSearch, benchSearch } from "@/benchmarks/search";
import { benchStudy } from "@/benchmarks/study";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { fail } from "./fail";

const seed = 20260309;
const strangerSeed = 20260310;
const strangerCount = 50;
const firstStranger = 900_000;

const usage = `usage: npm run -s bench -- [CASES ...]         (whole numbers under 900000; default 1000 10000)
       npm run -s bench -- engine [ROWS ...]  (the bare engine; default 100000 1000000)
       npm run -s bench -- study [LEARNERS]   (the pages of Study over 10000 cases; default 2000; build first)`;

const studyCases = 10_000;

const [first, ...rest] = process.argv.slice(2);
const isEngine = first === "engine";
const isStudy = first === "study";
const sizes = (isEngine || isStudy || first === undefined ? rest : [first, ...rest]).map(Number);
if (sizes.some((size) => !Number.isInteger(size) || size < 1 || (!isEngine && size >= firstStranger))) {
  fail(2, usage);
}
const say = (count: number, what: string) =>
  process.stderr.write(`${count} ${isEngine ? "rows" : "cases"}: ${what}\n`);
process.stdout.write(isEngine ? timeEngine(sizes) : isStudy ? await timeStudy(sizes) : timeCasebooks(sizes));

async function timeStudy([learners = 2000]: readonly number[]): Promise<string> {
  const { vocabulary } = loadVocabulary(resolve("content/vocabulary"));
  const sayWhat = (what: string) => process.stderr.write(`${learners} learners: ${what}\n`);
  const results = await benchStudy(vocabulary, { cases: studyCases, learners, seed }, sayWhat);
  return tableOf([{ count: learners, results }], "learners");
}

function timeEngine(counts: readonly number[]): string {
  const columns = (counts.length > 0 ? counts : [100_000, 1_000_000]).map((count) => {
    say(count, "retrieving");
    return { count, results: benchEngine(count) };
  });
  return tableOf(columns, "rows");
}

function timeCasebooks(counts: readonly number[]): string {
  const { vocabulary } = loadVocabulary(resolve("content/vocabulary"));
  const columns = (counts.length > 0 ? counts : [1000, 10_000]).map((count) => ({
    count,
    results: run(count, vocabulary),
  }));
  return tableOf(columns, "cases");
}

/** All suites at one size; what they built is dropped before the next. */
function run(count: number, vocabulary: Vocabulary): readonly Result[] {
  // Cases of another seed ask the questions and come in as new ones: the casebook holds none of them.
  const strangers = [
    ...readCorpus(vocabulary, { seed: strangerSeed, count: strangerCount, firstNumber: firstStranger }),
  ];
  const before = readMemory();
  const { casebook, results: loading } = benchLoad(vocabulary, { seed, count }, (what) => say(count, what));
  const loaded = readMemory();
  say(count, "building the indexes");
  const { bench, results: building } = benchBuildIndexes(vocabulary, casebook);
  const built = readMemory();
  const filling = benchFillSearch(bench.text);
  const memory = benchMemory({ before, loaded, built, searchable: readMemory() });
  say(count, "consulting");
  const consulting = benchConsult(bench, strangers);
  say(count, "searching");
  const searching = benchSearch(casebook, bench.text, strangers, seedRandom(seed));
  say(count, "counting patterns");
  const counting = benchPatterns(casebook, vocabulary);
  say(count, "taking cases in");
  const adding = benchAddCase(bench, strangers);
  return [...loading, ...building, filling, ...consulting, ...searching, ...counting, ...adding, ...memory];
}

/** The results as a Markdown table, a row a kind of work and a column a size. */
function tableOf(
  sized: readonly Readonly<{ count: number; results: readonly Result[] }>[],
  what: string,
): string {
  const head = ["work", ...sized.map(({ count }) => `${count.toLocaleString("en-US")} ${what}`)];
  const rows = (sized[0]?.results ?? []).map(({ work }, at) => [
    work,
    ...sized.map(({ results }) => results[at]?.shown ?? ""),
  ]);
  return [head, head.map((_, at) => (at === 0 ? "---" : "---:")), ...rows]
    .map((cells) => `| ${cells.join(" | ")} |\n`)
    .join("");
}
