import type { Forecast } from "./forecast";

/**
 * Mean squared distance from the truth over all classes: (1/n) sum sum_c (p_c - [c is the truth])^2. Lower is better.
 *
 * @returns 0..2; 0 for no forecasts
 * Source: Brier 1950, equation 2.
 */
export function brierScore(forecasts: readonly Forecast[]): number {
  let sum = 0;
  for (const { probabilities, truth } of forecasts) {
    for (const [at, probability] of probabilities.entries())
      sum += (probability - (at === truth ? 1 : 0)) ** 2;
  }
  return forecasts.length === 0 ? 0 : sum / forecasts.length;
}
