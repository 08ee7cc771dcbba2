import { resolve } from "node:path";
import { benchAddCase } from "@/benchmarks/addCase";
import { benchBuildIndexes } from "@/benchmarks/buildIndexes";
import { benchConsult } from "@/benchmarks/consult";
import { readCorpus } from "@/benchmarks/corpus";
import { benchLoad } from "@/benchmarks/load";
import { readMemory } from "@/benchmarks/measure";
import { benchMemory } from "@/benchmarks/memory";
import { seedRandom } from "@/benchmarks/random";
import type { Result } from "@/benchmarks/result";
import { benchSearch } from "@/benchmarks/search";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";
import { fail } from "./fail";

const seed = 20260309;
const strangerSeed = 20260310;
const strangerCount = 50;
const firstStranger = 900_000;

const sizes = process.argv.slice(2).map(Number);
if (sizes.some((size) => !Number.isInteger(size) || size < 1 || size >= firstStranger)) {
  fail(2, "usage: npm run -s bench -- [CASES ...]   (whole numbers under 900000; default 1000 10000)");
}

const { vocabulary } = loadVocabulary(resolve("content/vocabulary"));
const columns = (sizes.length > 0 ? sizes : [1000, 10_000]).map((count) => ({ count, results: run(count) }));
process.stdout.write(tableOf(columns));

/** All suites at one size; what they built is dropped before the next. */
function run(count: number): readonly Result[] {
  const say = (what: string) => process.stderr.write(`${count} cases: ${what}\n`);
  // Cases of another seed ask the questions and come in as new ones: the casebook holds none of them.
  const strangers = [
    ...readCorpus(vocabulary, { seed: strangerSeed, count: strangerCount, firstNumber: firstStranger }),
  ];
  const before = readMemory();
  say("writing and loading");
  const { casebook, results: loading } = benchLoad(vocabulary, { seed, count });
  const loaded = readMemory();
  say("building the indexes");
  const { bench, results: building } = benchBuildIndexes(vocabulary, casebook);
  const memory = benchMemory({ before, loaded, built: readMemory() });
  say("consulting");
  const consulting = benchConsult(bench, strangers);
  say("searching");
  const searching = benchSearch(casebook, bench.text, strangers, seedRandom(seed));
  say("taking cases in");
  const adding = benchAddCase(bench, strangers);
  return [...loading, ...building, ...consulting, ...searching, ...adding, ...memory];
}

/** The results as a Markdown table, a row a kind of work and a column a size. */
function tableOf(sized: readonly Readonly<{ count: number; results: readonly Result[] }>[]): string {
  const head = ["work", ...sized.map(({ count }) => `${count.toLocaleString("en-US")} cases`)];
  const rows = (sized[0]?.results ?? []).map(({ work }, at) => [
    work,
    ...sized.map(({ results }) => results[at]?.shown ?? ""),
  ]);
  return [head, head.map((_, at) => (at === 0 ? "---" : "---:")), ...rows]
    .map((cells) => `| ${cells.join(" | ")} |\n`)
    .join("");
}
