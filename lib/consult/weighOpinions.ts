import { poolOpinions } from "../diagnosis/poolOpinions";
import { defaultNonePrior, type Posterior, weighCauses } from "../diagnosis/posterior";
import { voteOfCases } from "../diagnosis/voteOfCases";
import { appliesTo } from "../vocabulary/appliesTo";
import type { Bench } from "./bench";
import { causeShares } from "./causeShares";
import { countTerms } from "./countTerms";
import type { Finding } from "./finding";
import type { Problem } from "./problem";
import type { RetrievedLike } from "./similarCases";
import type { SourcedFinding, Understanding } from "./understandProblem";

/** How much a whole text of words that no cause was ever told with adds to the prior of "none of these". Chosen. */
const strangeWords = 0.3;
/** What an instrument that nobody knows adds to it. Chosen. */
const strangeInstrument = 0.3;
/** Probability of "none of these" where nothing was found: with words that are all known, and what strange ones add. Chosen. */
const nothingFound = { known: 0.3, strange: 0.6 } as const;

/**
 * Weighs the causes: by what was found, by the like cases' causes, and by the words, all of them pooled.
 *
 * @returns probabilities by the order of the model's causes; none is possible for an instrument outside the handbook
 */
export function weighOpinions(
  bench: Bench,
  problem: Problem,
  { instrument, findings }: Understanding,
  keyed: ReadonlyMap<string, Finding & Partial<Pick<SourcedFinding, "shown">>>,
  retrieved: readonly RetrievedLike[],
): Posterior {
  const { vocabulary, model, spoken, reader } = bench;
  const outside = instrument !== undefined && vocabulary.instruments.get(instrument)?.outside === true;
  const possible = (id: string) =>
    !outside && appliesTo(vocabulary, vocabulary.causes.get(id)?.families ?? [], instrument);

  const words = countTerms([[wordsOfTrouble(problem, findings, bench), 1]], reader.words);
  const byWords = spoken.weigh(words.keys(), possible);
  const doubtful = new Set([...keyed].filter(([, { shown }]) => shown?.doubtful).map(([key]) => key));
  const outcomes = new Map([...keyed].map(([key, { outcome }]) => [key, outcome]));
  const isStrange = problem.instrument !== undefined && instrument === undefined;
  const nonePrior =
    defaultNonePrior + strangeWords * byWords.strange ** 2 + (isStrange ? strangeInstrument : 0);
  const byFindings = weighCauses(model, outcomes, { possible, nonePrior, doubtful });
  const prior = weighCauses(model, new Map(), { possible }).causes;
  const votes = retrieved.map(({ case: { causes }, similarity }) => ({
    similarity,
    causes: causeShares(causes),
  }));
  const pooled = poolOpinions(byFindings, voteOfCases(model.causes, prior, votes), byWords.logs);
  return findings.length > 0 || outside ? pooled : leaveRoom(pooled, byWords.strange);
}

/** The problem's words without those that say that something is sound: "no dents" tells of no dent. */
function wordsOfTrouble(
  { says = "", evidence }: Problem,
  findings: readonly SourcedFinding[],
  { vocabulary }: Bench,
): string {
  const sound = findings.filter(
    ({ check, outcome, shown }) => shown.absent || vocabulary.checks.get(check)?.normal === outcome,
  );
  const soundWords = new Set(sound.map(({ shown }) => shown.from));
  let said = says;
  for (const { shown } of sound) {
    if (!shown.span) continue;
    const [from, to] = shown.span;
    said = said.slice(0, from) + " ".repeat(to - from) + said.slice(to);
  }
  const told = evidence
    .map(({ check, found }) => `${check}: ${found}`)
    .filter((words) => !soundWords.has(words));
  return [said, ...told].join(". ");
}

/** Words alone are no finding: "none of these" keeps its share, the more of them are strange the more; a few known ones help little. */
function leaveRoom({ causes, noneFits }: Posterior, strange: number): Posterior {
  const least = nothingFound.known + nothingFound.strange * (1 - (1 - strange) ** 2);
  if (noneFits >= least) return { causes, noneFits };
  const scale = (1 - least) / (1 - noneFits);
  return { causes: causes.map((probability) => probability * scale), noneFits: least };
}
