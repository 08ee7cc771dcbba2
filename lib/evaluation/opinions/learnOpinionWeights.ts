import type { Bench } from "../../consult/bench/bench";
import { logSumExp } from "../../diagnosis/learned/logSumExp";
import { learnPoolWeights, poolLogs } from "../../diagnosis/learned/poolWeights";
import { type OpinionWeights, opinionWeightsSchema } from "../../vocabulary/opinionWeights";
import type { BenchNote } from "../notesReport";
import type { OpinionSample } from "./opinionSample";
import { sampleCases } from "./sampleCases";
import { sampleNotes } from "./sampleNotes";
import { sampleProblems } from "./sampleProblems";

/**
 * The weights found, and what they are worth: mean log loss in bits and shares of right answers, by rows not learned from. A
 * problem that is told twice, as data and as a note, may be learned from in one form while it is asked about in the other.
 */
export type LearnedWeights = Readonly<{
  weights: OpinionWeights;
  samples: number;
  leftOut: Readonly<{ logLossBits: number; hit1: number; hit3: number }>;
}>;

/** Pull of the weights toward equal ones. Chosen: a thousand samples hardly feel it. */
const pull = 1;
/** Groups of samples left out in turn for telling what the weights are worth. */
const groups = 5;
/** How often a problem of the bench counts: handbook and cases are read as they were written, and by them alone one grows too sure. Chosen. */
const problemSay = 10;
/** Stands for the logarithm of an impossible cause. */
const impossible = -1000;

/**
 * Learns what each source counts for when causes are weighed, from the handbook's notes and the finished cases, each asked
 * about as if it had never been written, and from problems written apart from them.
 *
 * Source: logarithmic opinion pool with weights by held-out samples, as in `learnPoolWeights`.
 */
export function learnOpinionWeights(bench: Bench, problems: readonly BenchNote[]): LearnedWeights {
  const { causes } = bench.model;
  const ofProblems = new Set(sampleProblems(bench, problems).map((sample) => lay(sample, causes)));
  const made = [...sampleNotes(bench), ...sampleCases(bench)].map((sample) => lay(sample, causes));
  const samples = [...ofProblems, ...made];
  const learn = (some: readonly Laid[]) => {
    const counted = some.flatMap((one) => Array<Laid>(ofProblems.has(one) ? problemSay : 1).fill(one));
    return learnPoolWeights(
      counted.map(({ logs }) => logs),
      Int32Array.from(counted, ({ truth }) => truth),
      pull,
    );
  };
  let bits = 0;
  let [first, three] = [0, 0];
  for (let group = 0; group < groups; group++) {
    const weights = learn(samples.filter((_, at) => at % groups !== group));
    for (const { logs, truth } of samples.filter((_, at) => at % groups === group)) {
      const pooled = poolLogs(logs, weights);
      const own = pooled[truth] ?? impossible;
      bits += (logSumExp(pooled) - own) / Math.LN2;
      const better = pooled.filter((log) => log > own).length;
      first += better < 1 ? 1 : 0;
      three += better < 3 ? 1 : 0;
    }
  }
  const found = learn(samples);
  const rounded = (value: number) => Number(value.toFixed(4));
  const weights = Object.fromEntries(sources.map((name, at) => [name, rounded(found[at] ?? 0)]));
  const share = (count: number) => rounded(count / samples.length);
  return {
    weights: opinionWeightsSchema.parse(weights),
    samples: samples.length,
    leftOut: { logLossBits: share(bits), hit1: share(first), hit3: share(three) },
  };
}

const sources = [
  "prior",
  "setDown",
  "readFromEvidence",
  "readFromText",
  "likeCases",
  "words",
  "pairs",
  "clauses",
] as const;

/** A sample as the pool wants it: the sources' logarithms over all causes. */
type Laid = Readonly<{ logs: readonly Float64Array[]; truth: number }>;

function lay({ opinions, cause }: OpinionSample, causes: readonly string[]): Laid {
  const logs = sources.map((name) => {
    const said = opinions[name];
    const own = said instanceof Float64Array ? said : said.logs;
    return Float64Array.from(causes, (id, row) => (opinions.possible(id) ? (own[row] ?? 0) : impossible));
  });
  return { logs, truth: causes.indexOf(cause) };
}
