import type { Forecast } from "./forecast";

/** What a probability of 0 counts as: else a single truth held impossible would make the mean infinite. Chosen. */
const leastProbability = 1e-12;

/**
 * Mean surprise at the truth, in bits: - (1/n) sum log2 p(truth). Lower is better.
 *
 * @returns 0 to 39.9, as a probability under 1e-12 counts as 1e-12; 0 for no forecasts
 * Source: Good 1952, Rational decisions.
 */
export function logLossBits(forecasts: readonly Forecast[]): number {
  let sum = 0;
  for (const { probabilities, truth } of forecasts) {
    sum -= Math.log2(Math.max(leastProbability, probabilities[truth] ?? 0));
  }
  return forecasts.length === 0 ? 0 : Math.max(0, sum / forecasts.length);
}
