/**
 * Noise that is the same in every run: normal, mean 0, standard deviation 1, by Box and Muller from a linear congruential
 * sequence (Numerical Recipes' constants).
 */
export function seededNoise(seed: number): () => number {
  let state = seed >>> 0;
  const uniform = () => {
    state = (1_664_525 * state + 1_013_904_223) % 2 ** 32;
    return (state + 0.5) / 2 ** 32;
  };
  return () => Math.sqrt(-2 * Math.log(uniform())) * Math.cos(2 * Math.PI * uniform());
}
