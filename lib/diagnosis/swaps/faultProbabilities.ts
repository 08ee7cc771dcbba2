/**
 * The probability of each part being at fault, given that at least one of the diagnoses holds in full.
 *
 *   P(part | E),  E: every part of some diagnosis is at fault (others may be at fault besides)
 *
 * Parts fail independently. Exact, by conditioning on one part after another until a diagnosis holds or none can.
 *
 * @param diagnoses minimal hitting sets; `[[]]` leaves every part at its prior
 * @param priors probability in 0..1 of each part being at fault before anything was tried; every part of a diagnosis must be there
 * @returns the probability of every part that has a prior, in the priors' order; undefined when no diagnosis can hold
 * @throws RangeError when a part has no prior or a prior is out of range
 * @example faultProbabilities([["a"]], new Map([["a", 0.1], ["b", 0.2]])) // a: 1, b: 0.2
 * Source: de Kleer & Williams 1987, Diagnosing multiple faults (independent fault priors conditioned on the conflicts).
 */
export function faultProbabilities(
  diagnoses: readonly (readonly string[])[],
  priors: ReadonlyMap<string, number>,
): ReadonlyMap<string, number> | undefined {
  for (const [part, prior] of priors)
    if (!(prior >= 0 && prior <= 1))
      throw new RangeError(`the prior of ${part} must be in 0..1; got ${prior}; give a probability`);
  const priorOf = (part: string): number => {
    const prior = priors.get(part);
    if (prior === undefined)
      throw new RangeError(`every part of a diagnosis must have a prior; got none for ${part}; add it`);
    return prior;
  };
  const evidence = probabilityOfAny(diagnoses, priorOf);
  if (!(evidence > 0)) return undefined;
  return new Map(
    [...priors].map(([part, prior]) => [
      part,
      Math.min(1, (prior * probabilityOfAny(assume(diagnoses, part, true), priorOf)) / evidence),
    ]),
  );
}

/** P(some diagnosis holds), by Shannon's expansion on the first part of the first diagnosis. */
function probabilityOfAny(
  diagnoses: readonly (readonly string[])[],
  priorOf: (part: string) => number,
): number {
  if (diagnoses.some((diagnosis) => diagnosis.length === 0)) return 1;
  const part = diagnoses[0]?.[0];
  if (part === undefined) return 0;
  const prior = priorOf(part);
  const atFault = prior > 0 ? prior * probabilityOfAny(assume(diagnoses, part, true), priorOf) : 0;
  return atFault + (1 - prior) * probabilityOfAny(assume(diagnoses, part, false), priorOf);
}

/** What is left of the diagnoses once a part is known to be at fault, or known to be sound. */
function assume(
  diagnoses: readonly (readonly string[])[],
  part: string,
  atFault: boolean,
): readonly (readonly string[])[] {
  return atFault
    ? diagnoses.map((diagnosis) => diagnosis.filter((other) => other !== part))
    : diagnoses.filter((diagnosis) => !diagnosis.includes(part));
}
