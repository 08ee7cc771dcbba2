import type { ContentProblem } from "../../document/contentProblem";
import { noFile } from "../keeping/contentHash";
import { diskFault } from "../keeping/diskFault";
import type { KeepingPlace } from "../keeping/keepingPlace";
import { type KeptFile, readKept } from "../keeping/readKept";
import { type FileKeeper, reviseFile } from "../keeping/reviseFile";
import type { Learner, LearnerSession } from "./learnerFile";
import { readLearner } from "./readLearner";
import { writeLearner } from "./writeLearner";

/** A session that was kept, or that stood there already; or what keeps it from being kept. */
export type AddedSession =
  | Readonly<{ kind: "kept" | "already there"; learner: Learner }>
  | Readonly<{ kind: "refused"; problems: readonly ContentProblem[] }>;

/** As often as somebody else may change the file in the same moment. Chosen. */
const mostTries = 8;
/** Every version holds all sessions before it: a few are enough to go back to. Chosen. */
export const mostKeptVersions = 5;

/**
 * Adds a session to a learner's file as it stands on disk now. A job counts once a day, by the first answer: what is given
 * again after the feedback was read is practice, and a second tap does no harm. Where somebody else changed the file
 * meanwhile the session is added to what they wrote.
 */
export function addSession(
  session: LearnerSession,
  place: KeepingPlace,
  keeper: Omit<FileKeeper, "mostKept">,
): AddedSession {
  for (let tries = 1; ; tries++) {
    const kept = lookAt(place);
    if ("problems" in kept) return { kind: "refused", problems: kept.problems };
    const { learner, problems } = readLearner(kept.text, place.file);
    if (!learner) return { kind: "refused", problems };
    if (learner.sessions.some((one) => one.case === session.case && one.day === session.day))
      return { kind: "already there", learner };
    const { notes, file, ...fields } = learner;
    const grown = { ...fields, sessions: [...fields.sessions, session] };
    const text = writeLearner(grown, notes);
    const again = readLearner(text, file);
    if (!again.learner) return { kind: "refused", problems: again.problems };
    const edit = { text, baseHash: kept.hash };
    const revised = reviseFile(edit, place, { ...keeper, mostKept: mostKeptVersions });
    if (revised.kind === "saved") return { kind: "kept", learner: again.learner };
    if (revised.kind === "refused") return revised;
    if (tries === mostTries) {
      const received = "a file that others change all the while";
      return { kind: "refused", problems: [problemOf(place, received, "nothing new: answer again")] };
    }
  }
}

function lookAt(place: KeepingPlace): KeptFile | Readonly<{ problems: readonly ContentProblem[] }> {
  try {
    const kept = readKept(place);
    if (kept.hash !== noFile) return kept;
    return { problems: [problemOf(place, "no such file", "the name again: its file is gone")] };
  } catch (error) {
    const fault = diskFault(error, place.folder);
    if (!fault) throw error;
    return { problems: [problemOf(place, fault.received, fault.expected)] };
  }
}

const problemOf = ({ file }: KeepingPlace, received: string, expected: string): ContentProblem => ({
  file,
  line: 0,
  field: "",
  received,
  expected,
});
