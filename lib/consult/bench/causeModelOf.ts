import { CauseModel, type CausePrior, type FindingKind } from "../../diagnosis/causeModel";
import { frequencyOf } from "../../diagnosis/frequencyWords";
import type { Cause } from "../../vocabulary/cause";
import type { Check } from "../../vocabulary/check";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { findingKey } from "../keyFindings";

/**
 * Jobs with each kind of cause, against one another. Closer together than they are met over the counter: what is asked
 * about has already withstood the usual remedy. Chosen: see `evaluate --casebook`.
 */
const jobsOf = { "very common": 6, common: 4, uncommon: 2.5, rare: 1.5 } as const;
/** How likely a sound outcome is where a cause has nothing to do with a check. Chosen. */
const soundByChance = 0.96;

/** Builds the model of the handbook alone: causes by how common they are, tell-tales by their frequency words. */
export function causeModelOf(vocabulary: Vocabulary): CauseModel {
  const causes = [...vocabulary.causes.values()].map(
    (cause): CausePrior => ({ id: cause.id, jobs: jobsOf[cause.howCommon], tellTales: tellTalesOf(cause) }),
  );
  return new CauseModel(causes, findingKinds(vocabulary));
}

/** Every finding key with its outcomes: each check on the troubled part, and on its siblings. */
function findingKinds({ checks }: Vocabulary): FindingKind[] {
  return [...checks.values()].flatMap((check) =>
    [false, true].map((others) => ({
      key: findingKey(check.id, others),
      outcomes: check.outcomes.map(({ id }) => id),
      background: backgroundOf(check),
    })),
  );
}

function backgroundOf({ outcomes, normal }: Check): number[] {
  if (normal === undefined) return outcomes.map(() => 1 / outcomes.length);
  const amiss = (1 - soundByChance) / (outcomes.length - 1);
  return outcomes.map(({ id }) => (id === normal ? soundByChance : amiss));
}

function tellTalesOf({ findings, others }: Cause): Map<string, Map<string, number>> {
  const told = new Map<string, Map<string, number>>();
  for (const [entries, sibling] of [[findings, false] as const, [others, true] as const]) {
    for (const [check, words] of Object.entries(entries)) {
      const numbers = Object.entries(words).map(([outcome, word]) => [outcome, frequencyOf[word]] as const);
      told.set(findingKey(check, sibling), new Map(numbers));
    }
  }
  return told;
}
