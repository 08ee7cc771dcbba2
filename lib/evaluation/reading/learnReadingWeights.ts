import { learnPoolWeights } from "../../diagnosis/learned/poolWeights";
import { clauseSourceNames } from "../../reading/clauses/clauseSources";
import { weighClause } from "../../reading/clauses/weighClause";
import type { Reader } from "../../reading/reader";
import { type ReadingWeights, readingWeightsSchema } from "../../vocabulary/readingWeights";
import { type ClauseSample, sampleSayings } from "./sampleSayings";

/** The weights found, and what they are worth on sayings not learned from: mean log loss in bits over clauses, and the share of those in which what they tell comes first. */
export type LearnedReading = Readonly<{
  weights: ReadingWeights;
  clauses: number;
  leftOut: Readonly<{ logLossBits: number; likeliestRight: number }>;
}>;

/** Pull of the weights toward equal ones. Chosen: thousands of clauses hardly feel it. */
const pull = 1;
/** Groups of sayings left out in turn for telling what the weights are worth. */
const groups = 5;
/** Stands for the logarithm of what is impossible. */
const impossible = -1000;

/**
 * Learns what each source counts for when a clause is read, from the vocabulary's sayings, each asked about as if it had never been
 * written.
 *
 * Source: logarithmic opinion pool with weights by held-out samples, as in `learnPoolWeights`.
 */
export function learnReadingWeights(reader: Reader): LearnedReading {
  const samples = sampleSayings(reader);
  const sayings = [...new Set(samples.map(({ saying }) => saying))];
  const groupOf = new Map(sayings.map((saying, at) => [saying, at % groups]));
  let [bits, right] = [0, 0];
  for (let group = 0; group < groups; group++) {
    const weights = learn(samples.filter(({ saying }) => groupOf.get(saying) !== group));
    for (const { sources, open, tells } of samples.filter(({ saying }) => groupOf.get(saying) === group)) {
      const { outcomes, nothing } = weighClause(sources, weights, open);
      const share = tells.length === 0 ? nothing : tells.reduce((sum, row) => sum + (outcomes[row] ?? 0), 0);
      bits -= Math.log2(Math.max(share, 1e-9));
      const most = Math.max(nothing, ...outcomes);
      right +=
        (tells.length === 0 ? nothing : Math.max(...tells.map((row) => outcomes[row] ?? 0))) >= most ? 1 : 0;
    }
  }
  const perClause = (sum: number) => Number((sum / samples.length).toFixed(4));
  return {
    weights: learn(samples),
    clauses: samples.length,
    leftOut: { logLossBits: perClause(bits), likeliestRight: perClause(right) },
  };
}

const names = [...clauseSourceNames, "nothing", "nothingStrange"] as const;

function learn(samples: readonly ClauseSample[]): ReadingWeights {
  const rows = samples.flatMap((sample) => {
    const { tells, open } = sample;
    const truths = tells.length === 0 ? [open.length] : tells;
    const laid = lay(sample);
    return truths.map((truth) => ({ laid, truth }));
  });
  const found = learnPoolWeights(
    rows.map(({ laid }) => laid),
    Int32Array.from(rows, ({ truth }) => truth),
    pull,
  );
  return readingWeightsSchema.parse(
    Object.fromEntries(names.map((name, at) => [name, Number((found[at] ?? 0).toFixed(4))])),
  );
}

/** A clause as the pool wants it: the sources' logarithms over all outcomes, and last over none of them. */
function lay({ sources: { says, strange }, open }: ClauseSample): Float64Array[] {
  const laid = clauseSourceNames.map((name) => {
    const logs = new Float64Array(open.length + 1);
    for (const [row, isOpen] of open.entries()) logs[row] = isOpen ? (says[name][row] ?? 0) : impossible;
    return logs;
  });
  const ofNothing = [1, strange].map((amount) => {
    const logs = new Float64Array(open.length + 1);
    logs[open.length] = amount;
    return logs;
  });
  return [...laid, ...ofNothing];
}
