import { type Forecast, firstChoice } from "./forecast";

/**
 * How far the confidence in the first choice lies from how often it is right: sum_b n_b/n |right_b - confidence_b|, over
 * bins of equal width, (0, 1/B], (1/B, 2/B] and so on. Lower is better.
 *
 * @param bins B, whole, 1 or more
 * @returns 0..1; 0 for no forecasts
 * Source: Naeini, Cooper & Hauskrecht 2015 (expected calibration error).
 */
export function calibrationError(forecasts: readonly Forecast[], bins: number): number {
  const excess = new Float64Array(bins);
  for (const { probabilities, truth } of forecasts) {
    const choice = firstChoice(probabilities);
    const confidence = probabilities[choice] ?? 0;
    const bin = Math.min(bins - 1, Math.max(0, Math.ceil(confidence * bins) - 1));
    excess[bin] = (excess[bin] ?? 0) + (choice === truth ? 1 : 0) - confidence;
  }
  return forecasts.length === 0
    ? 0
    : excess.reduce((sum, value) => sum + Math.abs(value), 0) / forecasts.length;
}
