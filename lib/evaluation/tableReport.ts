import type { Evaluation } from "./evaluateTable";
import { brierScore } from "./scores/brierScore";
import { calibrationError } from "./scores/calibrationError";
import { rankOfTruth } from "./scores/forecast";
import { logLossBits } from "./scores/logLossBits";
import { summariseRanks } from "./summariseRanks";

/** Bins of the calibration error. */
const calibrationBins = 10;

/** How an engine did on a table; shares 0..1, log loss in bits, Brier score 0..2. */
export type TableReport = Readonly<{
  n: number;
  correct: number;
  accuracy: number;
  hit1: number;
  hit2: number;
  hit3: number;
  mrr: number;
  logLossBits: number;
  brier: number;
  ece: number;
  folds: number;
  secondsPerQuery: number;
  secondsLearning: number;
}>;

/** Sums up an evaluation. */
export function reportOf({
  forecasts,
  foldCount,
  secondsAnswering,
  secondsLearning,
}: Evaluation): TableReport {
  const ranks = forecasts.map(rankOfTruth);
  const { n, hit1, hit2, hit3, mrr } = summariseRanks(ranks);
  const correct = ranks.filter((rank) => rank === 1).length;
  return {
    n,
    correct,
    accuracy: rounded(correct / n),
    hit1,
    hit2,
    hit3,
    mrr,
    logLossBits: rounded(logLossBits(forecasts)),
    brier: rounded(brierScore(forecasts)),
    ece: rounded(calibrationError(forecasts, calibrationBins)),
    folds: foldCount,
    secondsPerQuery: Number((secondsAnswering / n).toFixed(7)),
    secondsLearning: Number(secondsLearning.toFixed(3)),
  };
}

const rounded = (value: number) => Number(value.toFixed(6));
