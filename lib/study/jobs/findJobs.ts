import type { Case } from "../../casebook/caseFile";
import { rootCauses } from "../../casebook/rootCauses";
import { matchesWords } from "../../text/matchesWords";
import { familyOf } from "../../vocabulary/familyOf";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import { isFitForStudy } from "./isFitForStudy";

/** What jobs for a lesson are looked for by; null and empty ask for nothing. */
export type JobsAsked = Readonly<{ find: string; family: string | null; cause: string | null }>;

/**
 * Finds the jobs that can be worked through by the words of their title, complaint, instrument and number, by family and by
 * root cause.
 *
 * @returns in the order of the cases
 */
export function findJobs(cases: Iterable<Case>, asked: JobsAsked, vocabulary: Vocabulary): Case[] {
  const { find, family, cause } = asked;
  return [...cases].filter(
    (kase) =>
      isFitForStudy(kase) &&
      (cause === null || rootCauses(kase).includes(cause)) &&
      (family === null || familyOf(vocabulary, kase.instrument) === family) &&
      matchesWords(
        [
          kase.id,
          kase.title,
          kase.complaint,
          vocabulary.instruments.get(kase.instrument)?.label ?? kase.instrument,
        ].join(" "),
        find,
      ),
  );
}
