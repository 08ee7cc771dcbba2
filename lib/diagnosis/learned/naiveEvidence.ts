import { classPrior } from "../../similarity/learned/classPrior";
import type { LabelledRows } from "../../similarity/learned/feature";
import { unknownTells } from "../../similarity/learned/unknownTells";
import { type Cutting, cutAll, encodeAll } from "./codedRows";
import { normaliseLogs } from "./logSumExp";
import type { Judge, Opinions } from "./opinion";

/** log P(code | class) of one feature at [class * width + code]; unknown adds nothing unless it tells something. */
type Evidence = Readonly<{ codes: Uint16Array; width: number; logs: Float64Array; skipsUnknown: boolean }>;

/**
 * Weighs the classes by each feature on its own: log P(c) + sum log P(v_a | c), with Dirichlet-smoothed likelihoods
 * (n_vc + w P(v)) / (n_c + w), w the number of values.
 *
 * @param cutting how numbers are cut
 * Source: naive Bayes, Duda & Hart 1973; Dirichlet smoothing, Gelman et al., Bayesian Data Analysis, section 3.4.
 */
export function naiveEvidence(cutting: Cutting): Judge {
  return {
    learn: (data, settled) => {
      const cuts = cutAll(data, settled, cutting);
      return (rows) => judge(data, rows, cuts);
    },
  };
}

function judge(data: LabelledRows, rows: Int32Array, cuts: readonly number[][]): Opinions {
  const { labels, classCount } = data;
  const priorLogs = classPrior(data, rows).map(Math.log);
  const evidence = encodeAll(data.features, rows, cuts).map(({ codes, width }): Evidence => {
    const skipsUnknown = !unknownTells(codes, data, rows);
    const counts = new Float64Array(classCount * width);
    const byClass = new Float64Array(classCount);
    const byCode = new Float64Array(width).fill(0.5);
    for (const row of rows) {
      const code = codes[row] ?? 0;
      if (code === 0 && skipsUnknown) continue;
      const label = labels[row] ?? 0;
      counts[label * width + code] = (counts[label * width + code] ?? 0) + 1;
      byClass[label] = (byClass[label] ?? 0) + 1;
      byCode[code] = (byCode[code] ?? 0) + 1;
    }
    const total = byCode.reduce((sum, count) => sum + count, 0);
    const logs = counts.map((count, cell) => {
      const share = (byCode[cell % width] ?? 0) / total;
      return Math.log((count + width * share) / ((byClass[Math.floor(cell / width)] ?? 0) + width));
    });
    return { codes, width, logs, skipsUnknown };
  });
  return (row) => {
    const sum = priorLogs.slice();
    for (const { codes, width, logs, skipsUnknown } of evidence) {
      const code = codes[row] ?? 0;
      if (code === 0 && skipsUnknown) continue;
      for (let label = 0; label < classCount; label++) {
        sum[label] = (sum[label] ?? 0) + (logs[label * width + code] ?? 0);
      }
    }
    return [normaliseLogs(sum)];
  };
}
