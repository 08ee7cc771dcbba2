import { createHash } from "node:crypto";
import type { Case } from "../../../casebook/caseFile";
import type { CauseModel } from "../../../diagnosis/causeModel";
import { WordModel } from "../../../diagnosis/wordModel";
import { causeShares } from "../../causes/causeShares";
import { caseOutcomes } from "../caseAttributes";
import { causeModelOf } from "../causeModelOf";
import { learnWords, wordModelOf } from "../wordsOfCauses";
import type { Teaching } from "./learned";

/** How many cases, and causes of the handbook, are learned for the telling. Chosen: some twenty milliseconds. */
const samples = 12;

/**
 * Tells in few letters what some cases and some of the handbook's causes teach: another text where they would teach something
 * else today, by a version of Benchlore that learns otherwise.
 *
 * @param ids of all the cases learned
 * @param caseOf a case as it was learned
 * @param handbook the handbook's model, before any case
 */
export function tellSamples(
  ids: Iterable<string>,
  caseOf: (id: string) => Case | undefined,
  { vocabulary, reader }: Teaching,
  handbook: CauseModel = causeModelOf(vocabulary),
): string {
  const cases = pickSome([...ids].sort()).map((id) => caseOf(id));
  const spoken = new WordModel(handbook.causes);
  for (const kase of cases) if (kase) learnWords(spoken, kase, reader.words);
  const lessons = cases.map((kase) => kase && [causeShares(kase.causes), caseOutcomes(kase, vocabulary)]);
  const hash = createHash("sha256").update(JSON.stringify(lessons));
  for (const words of [spoken, handbookWords(handbook, { vocabulary, reader })]) {
    const { terms, counts } = words.lessons();
    hash.update(JSON.stringify([terms, [...counts].map((count) => count.toPrecision(12))]));
  }
  return hash.digest("hex");
}

/** The words of a few of the handbook's causes. */
function handbookWords(handbook: CauseModel, { vocabulary, reader }: Teaching): WordModel {
  const causes = new Map(pickSome([...vocabulary.causes]));
  return wordModelOf({ ...vocabulary, causes }, handbook, reader);
}

function pickSome<Item>(list: readonly Item[]): Item[] {
  const stride = Math.max(1, Math.ceil(list.length / samples));
  return list.filter((_, at) => at % stride === 0);
}
