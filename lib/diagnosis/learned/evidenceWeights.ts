import { classPrior } from "../../similarity/learned/classPrior";
import { encodeFeature } from "../../similarity/learned/encodeFeature";
import { equalFrequencyCuts } from "../../similarity/learned/equalFrequencyCuts";
import type { Feature, LabelledRows } from "../../similarity/learned/feature";
import { minimise } from "../../similarity/learned/minimise";
import { standardise } from "../../similarity/learned/plainDifference";
import { logSumExp, normaliseLogs } from "./logSumExp";
import type { Judge, Opinions } from "./opinion";

/** Walking on brings nothing that shows. Chosen. */
const search = { mostSteps: 25, tolerance: 1e-4 } as const;
/** Rows learned from at most: an even sample of more tells as much. Chosen. */
const mostRows = 4000;

export type EvidenceWeightsOptions = Readonly<{
  /** Pull of the weights toward 0: half of this times their squares is added to the log loss in nats. */
  pull: number;
  /** Bins beside the straight line in which a number has weights of its own; 0 for the line alone. */
  bins: number;
}>;

/**
 * Weights of evidence learned together, so that what goes together is not counted twice: log P(c | v) = b_c + sum over
 * features of w(c, v_a) + constant, the weights pulled toward 0. A word has a weight a value, unknown included; a number one
 * for its standard deviations from the mean, and one a bin if asked.
 *
 * Source: multinomial logistic regression with a ridge, le Cessie & van Houwelingen 1992.
 */
export function evidenceWeights(options: EvidenceWeightsOptions): Judge {
  return {
    learn: (data, rows) => {
      const terms = data.features.flatMap((feature) => termsOf(feature, rows, options.bins));
      const opinions = judge(data, terms, learnWeights(data, rows, terms, options.pull));
      // Weights take long to learn, and a row more or less hardly moves them: they are settled once.
      return () => opinions;
    },
  };
}

/** Part of the sum: by row the weight's number within the term, -1 for none, and what it is multiplied by. */
type Term = Readonly<{ places: Int16Array; factors: Float64Array | undefined; width: number }>;

function termsOf(feature: Feature, rows: Int32Array, bins: number): Term[] {
  if (feature.kind === "coded") {
    const { codes, width } = encodeFeature(feature, rows, []);
    return [{ places: Int16Array.from(codes), factors: undefined, width }];
  }
  const scaled = standardise(feature.numbers, rows);
  if (scaled === undefined) return [];
  const places = Int16Array.from(scaled, (value) => (Number.isNaN(value) ? 1 : 0));
  const factors = scaled.map((value) => (Number.isNaN(value) ? 1 : value));
  const line: Term = { places, factors, width: 2 };
  if (bins === 0) return [line];
  const { codes, width } = encodeFeature(feature, rows, equalFrequencyCuts(feature.numbers, rows, bins));
  return [line, { places: Int16Array.from(codes, (code) => code - 1), factors: undefined, width: width - 1 }];
}

function learnWeights(
  data: LabelledRows,
  allRows: Int32Array,
  terms: readonly Term[],
  pull: number,
): Float64Array {
  const { labels, classCount } = data;
  const every = Math.max(1, Math.ceil(allRows.length / mostRows));
  const rows = allRows.filter((_, at) => at % every === 0);
  const active = gather(terms, rows, classCount);
  const start = new Float64Array(classCount + active.weightCount);
  start.set(classPrior(data, allRows).map(Math.log));
  const scores = new Float64Array(classCount);
  return minimise(
    (weights, gradient) => {
      gradient.fill(0);
      let loss = 0;
      for (let at = 0; at < rows.length; at++) {
        const from = at * terms.length;
        addScores(scores, weights, active, from, terms.length);
        const truth = labels[rows[at] ?? 0] ?? 0;
        const total = logSumExp(scores);
        loss += total - (scores[truth] ?? 0);
        for (let label = 0; label < classCount; label++) {
          const error = Math.exp((scores[label] ?? 0) - total) - (label === truth ? 1 : 0);
          scores[label] = error;
          gradient[label] = (gradient[label] ?? 0) + error;
        }
        for (let term = from; term < from + terms.length; term++) {
          const weight = active.weights[term] ?? 0;
          if (weight < 0) continue;
          const factor = active.factors[term] ?? 0;
          for (let label = 0; label < classCount; label++) {
            gradient[weight + label] = (gradient[weight + label] ?? 0) + factor * (scores[label] ?? 0);
          }
        }
      }
      for (let at = classCount; at < weights.length; at++) {
        const weight = weights[at] ?? 0;
        loss += 0.5 * pull * weight * weight;
        gradient[at] = (gradient[at] ?? 0) + pull * weight;
      }
      return loss;
    },
    start,
    search,
  );
}

/** For every row and term the first of the term's weights (one a class), -1 for none, and the factor. */
type Active = Readonly<{ weights: Int32Array; factors: Float64Array; weightCount: number }>;

function gather(terms: readonly Term[], rows: Int32Array, classCount: number): Active {
  const weights = new Int32Array(rows.length * terms.length);
  const factors = new Float64Array(rows.length * terms.length);
  let first = classCount;
  for (const [at, term] of terms.entries()) {
    for (const [index, row] of rows.entries()) {
      const place = term.places[row] ?? -1;
      weights[index * terms.length + at] = place < 0 ? -1 : first + place * classCount;
      factors[index * terms.length + at] = term.factors?.[row] ?? 1;
    }
    first += term.width * classCount;
  }
  return { weights, factors, weightCount: first - classCount };
}

function addScores(
  scores: Float64Array,
  weights: Float64Array,
  active: Active,
  from: number,
  termCount: number,
): void {
  for (let label = 0; label < scores.length; label++) scores[label] = weights[label] ?? 0;
  for (let term = from; term < from + termCount; term++) {
    const weight = active.weights[term] ?? -1;
    if (weight < 0) continue;
    const factor = active.factors[term] ?? 0;
    for (let label = 0; label < scores.length; label++) {
      scores[label] = (scores[label] ?? 0) + factor * (weights[weight + label] ?? 0);
    }
  }
}

function judge({ classCount }: LabelledRows, terms: readonly Term[], weights: Float64Array): Opinions {
  return (row) => {
    const scores = new Float64Array(classCount);
    addScores(scores, weights, gather(terms, Int32Array.of(row), classCount), 0, terms.length);
    return [normaliseLogs(scores)];
  };
}
