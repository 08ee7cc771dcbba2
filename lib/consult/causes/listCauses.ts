import type { Posterior } from "../../diagnosis/posterior";
import { lowerFirst } from "../../text/lowerFirst";
import type { LikelyCause, Reason } from "../answer";
import type { Bench } from "../bench/bench";
import type { Finding } from "../finding";
import { parseFindingKey } from "../keyFindings";
import type { RetrievedLike } from "../similarCases";
import { causeShares } from "./causeShares";

/** How many causes are listed, and how many reasons and cases stand behind each. */
const most = { causes: 8, reasons: 6, cases: 6 } as const;
/** A finding that shifts the odds by less than this is no reason: 1 decibel of evidence, hardly to be felt. Source: Good 1950. */
const leastDecibans = 1;

/**
 * Lists the likeliest causes with what speaks for and against each.
 * Weight of evidence of a finding for a cause: 10 log10 P(f | c) / P(f | not c), in decibans.
 *
 * @returns at most eight, by falling probability, ties by id
 * Source: Good 1950, Probability and the Weighing of Evidence.
 */
export function listCauses(
  bench: Bench,
  belief: Posterior,
  keyed: ReadonlyMap<string, Finding>,
  retrieved: readonly RetrievedLike[],
): LikelyCause[] {
  const { model, vocabulary } = bench;
  const ranked = model.causes
    .map((id, row) => ({ id, row, probability: belief.causes[row] ?? 0 }))
    .filter(({ probability }) => probability > 0)
    .sort((a, b) => b.probability - a.probability || (a.id < b.id ? -1 : 1))
    .slice(0, most.causes);
  return ranked.map(({ id, row, probability }) => {
    const reasons = reasonsFor(bench, belief, keyed, row);
    return {
      id,
      probability,
      label: vocabulary.causes.get(id)?.label ?? id,
      for: reasons.filter(({ decibans }) => decibans > 0).slice(0, most.reasons),
      against: reasons
        .filter(({ decibans }) => decibans < 0)
        .reverse()
        .slice(0, most.reasons),
      cases: retrieved
        .filter(({ case: { causes } }) =>
          causeShares(causes).some((share) => share.id === id && share.share >= 0.5),
        )
        .slice(0, most.cases)
        .map(({ case: kase }) => kase.id),
    };
  });
}

/** Every finding's weight of evidence for one cause against the others, the strongest for it first. */
function reasonsFor(
  { model, vocabulary }: Bench,
  belief: Posterior,
  keyed: ReadonlyMap<string, Finding>,
  row: number,
): Reason[] {
  return [...keyed]
    .flatMap(([key, { check: id, outcome: found }]) => {
      const likelihoods = model.likelihoods(key, found);
      if (!likelihoods) return [];
      const decibans = 10 * Math.log10((likelihoods[row] ?? 1) / elsewhere(model, belief, likelihoods, row));
      if (Math.abs(decibans) < leastDecibans) return [];
      const check = vocabulary.checks.get(id);
      const label = check?.outcomes.find((one) => one.id === found)?.label ?? found;
      const others = parseFindingKey(key).others ? ", the others" : "";
      const words = `${check?.label ?? id}${others}: ${lowerFirst(label)}`;
      return [{ check: id, outcome: found, words, decibans: Number(decibans.toFixed(1)) }];
    })
    .sort((a, b) => b.decibans - a.decibans);
}

/** P(f | not c): the other causes' likelihoods by how common they are among the instrument's own. */
function elsewhere(model: Bench["model"], belief: Posterior, likelihoods: Float64Array, row: number): number {
  let sum = 0;
  let weight = 0;
  for (let other = 0; other < likelihoods.length; other += 1) {
    if (other === row || belief.causes[other] === 0) continue;
    sum += model.jobsOf(other) * (likelihoods[other] ?? 0);
    weight += model.jobsOf(other);
  }
  return weight > 0 ? sum / weight : (likelihoods[row] ?? 1);
}
