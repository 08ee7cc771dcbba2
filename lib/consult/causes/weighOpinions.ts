import { poolOpinions } from "../../diagnosis/poolOpinions";
import { defaultNonePrior, normaliseLogs, type Posterior } from "../../diagnosis/posterior";
import type { OpinionWeights } from "../../vocabulary/opinionWeights";
import type { Opinions } from "./opinionsOn";

/** How much a whole text of words that no cause was ever told with adds to the prior of "none of these". Chosen. */
const strangeWords = 0.3;
/** What an instrument that nobody knows adds to it. Chosen. */
const strangeInstrument = 0.3;
/** Probability of "none of these" where nothing was found: with words that are all known, and what strange ones add. Chosen. */
const nothingFound = { known: 0.3, strange: 0.6 } as const;

/** What bears on "none of these" beside the sources. */
export type Circumstances = Readonly<{
  isStrangeInstrument: boolean;
  isOutside: boolean;
  findingCount: number;
}>;

/**
 * Weighs the causes by all that the sources say, each for what it has been found to be worth.
 *
 * @returns probabilities by the order of the model's causes; none is possible for an instrument outside the handbook
 */
export function weighOpinions(
  opinions: Opinions,
  weights: OpinionWeights,
  { isStrangeInstrument, isOutside, findingCount }: Circumstances,
): Posterior {
  const { prior, strange } = opinions;
  const none = defaultNonePrior + strangeWords * strange ** 2 + (isStrangeInstrument ? strangeInstrument : 0);
  const before = normaliseLogs(
    prior.map((log) => weights.prior * log),
    Number.NEGATIVE_INFINITY,
  );
  const isNothing = before.noneFits === 1;
  const pooled = poolOpinions(
    {
      causes: before.causes.map((probability) => (1 - none) * probability),
      noneFits: isNothing ? 1 : none,
    },
    [
      { ...opinions.setDown, weight: weights.setDown },
      { logs: opinions.readFromEvidence, weight: weights.readFromEvidence },
      { ...opinions.readFromText, weight: weights.readFromText },
      { logs: opinions.clauses, weight: weights.clauses },
      { logs: opinions.likeCases, weight: weights.likeCases },
      { logs: opinions.words, weight: weights.words },
      { logs: opinions.pairs, weight: weights.pairs },
    ],
  );
  return findingCount > 0 || isOutside ? pooled : leaveRoom(pooled, strange);
}

/** Words alone are no finding: "none of these" keeps its share, the more of them are strange the more; a few known ones help little. */
function leaveRoom({ causes, noneFits }: Posterior, strange: number): Posterior {
  const least = nothingFound.known + nothingFound.strange * (1 - (1 - strange) ** 2);
  if (noneFits >= least) return { causes, noneFits };
  const scale = (1 - least) / (1 - noneFits);
  return { causes: causes.map((probability) => probability * scale), noneFits: least };
}
