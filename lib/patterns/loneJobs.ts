import type { Case } from "../casebook/caseFile";
import { parseFindingKey } from "../consult/keyFindings";
import { isFinished } from "../consult/record/isFinished";
import { outcomesOf } from "../consult/record/outcomesOf";
import { familyOf } from "../vocabulary/familyOf";
import type { Vocabulary } from "../vocabulary/vocabulary";

/** As many findings out of the ordinary make two jobs neighbours. Chosen: one alone is shared by chance. */
const sharedByNeighbours = 2;

/**
 * Finds the finished jobs without a neighbour: no other one of the family showed two of the same findings out of the ordinary,
 * so whoever meets such a complaint again has a single story to go by. A job that showed only one is alone where no other
 * showed that one; a job that showed none is not looked at.
 *
 * @returns in the order of the cases
 */
export function loneJobs(cases: readonly Case[], vocabulary: Vocabulary): Case[] {
  const jobs = cases.filter(isFinished).map((kase) => ({ kase, symptoms: symptomsOf(kase, vocabulary) }));
  const bySymptom = new Map<string, number[]>();
  for (const [at, { symptoms }] of jobs.entries())
    for (const symptom of symptoms) {
      const before = bySymptom.get(symptom);
      if (before) before.push(at);
      else bySymptom.set(symptom, [at]);
    }
  // How much each job shares with the one asked about last, and which that was: nothing has to be cleared in between.
  const shared = new Uint16Array(jobs.length);
  const askedBy = new Int32Array(jobs.length).fill(-1);
  const hasNeighbour = (own: number, symptoms: readonly string[]) => {
    const enough = Math.min(sharedByNeighbours, symptoms.length);
    for (const symptom of symptoms)
      for (const at of bySymptom.get(symptom) ?? []) {
        shared[at] = askedBy[at] === own ? (shared[at] ?? 0) + 1 : 1;
        askedBy[at] = own;
        if (at !== own && shared[at] === enough) return true;
      }
    return false;
  };
  return jobs.flatMap(({ kase, symptoms }, at) =>
    symptoms.length > 0 && !hasNeighbour(at, symptoms) ? [kase] : [],
  );
}

/** Kept as long as the case is, which never changes once read. */
const remembered = new WeakMap<Case, readonly string[]>();

/** What a job showed that a sound instrument would not, by family; of a sound sibling's findings none. */
function symptomsOf(kase: Case, vocabulary: Vocabulary): readonly string[] {
  const known = remembered.get(kase);
  if (known) return known;
  const symptoms = readSymptoms(kase, vocabulary);
  remembered.set(kase, symptoms);
  return symptoms;
}

function readSymptoms(kase: Case, vocabulary: Vocabulary): string[] {
  const family = familyOf(vocabulary, kase.instrument);
  return [...outcomesOf(kase, vocabulary)].flatMap(([key, outcome]) => {
    const { check, others } = parseFindingKey(key);
    return others || vocabulary.checks.get(check)?.normal === outcome ? [] : [`${family} ${key} ${outcome}`];
  });
}
