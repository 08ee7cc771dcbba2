/**
 * The number behind each word of the handbook: the share of jobs with this cause in which the finding is met.
 * Chosen near the middle of what readers of English mean by such words.
 * Source: Mosteller & Youtz 1990, Quantifying probabilistic expressions (from memory), rounded.
 */
export const frequencyOf = {
  always: 0.97,
  usually: 0.8,
  often: 0.6,
  sometimes: 0.3,
  rarely: 0.08,
  never: 0.02,
} as const;
