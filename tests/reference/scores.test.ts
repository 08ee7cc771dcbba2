import { describe, expect, it } from "vitest";
import { brierScore } from "@/lib/evaluation/scores/brierScore";
import { calibrationError } from "@/lib/evaluation/scores/calibrationError";
import { rankOfTruth } from "@/lib/evaluation/scores/forecast";
import { logLossBits } from "@/lib/evaluation/scores/logLossBits";

/*
 * Five forecasts over classes a, b, c; values worked out by hand from Brier 1950, Good 1952 and Naeini, Cooper &
 * Hauskrecht 2015: log loss = -(log2 .7 + log2 .4 + log2 .8 + log2 .6 + log2 .05) / 5.
 */
const forecasts = [
  { probabilities: Float64Array.of(0.7, 0.2, 0.1), truth: 0 },
  { probabilities: Float64Array.of(0.5, 0.4, 0.1), truth: 1 },
  { probabilities: Float64Array.of(0.1, 0.1, 0.8), truth: 2 },
  { probabilities: Float64Array.of(0.3, 0.6, 0.1), truth: 1 },
  { probabilities: Float64Array.of(0.9, 0.05, 0.05), truth: 2 },
];

describe("scores of five forecasts", () => {
  it("Brier .559, log loss 1.443465 bits, calibration error .300 in five bins", () => {
    expect(brierScore(forecasts)).toBeCloseTo(0.559, 12);
    expect(logLossBits(forecasts)).toBeCloseTo(1.443465, 6);
    expect(calibrationError(forecasts, 5)).toBeCloseTo(0.3, 12);
  });

  it("ranks the truth by probability, ties by the order of the classes", () => {
    expect(forecasts.map(rankOfTruth)).toEqual([1, 2, 1, 1, 3]);
  });
});
