import type { ContentProblem } from "../../document/contentProblem";
import { noFile } from "../keeping/contentHash";
import { type FileKeeper, type HeldFile, holdFile, type RefusedFile } from "../keeping/holdFile";
import type { KeepingPlace } from "../keeping/keepingPlace";
import type { Learner, LearnerSession } from "./learnerFile";
import { readLearner } from "./readLearner";
import { writeLearner } from "./writeLearner";

/** A session that was kept, or that stood there already; or what keeps it from being kept. */
export type AddedSession = Readonly<{ kind: "kept" | "already there"; learner: Learner }> | RefusedFile;

/** As often as an editor may write in the very moment in which a session is added. Chosen. */
const mostTries = 4;
/** Every version holds all sessions before it: a few are enough to go back to. Chosen. */
export const mostKeptVersions = 5;

/**
 * Adds a session to a learner's file as it stands on disk now. A job counts once a day, by the first answer: what is given
 * again after the feedback was read is practice, and a second tap does no harm. Programs that add at once wait for one
 * another; what an editor wrote meanwhile is added to.
 */
export function addSession(
  session: LearnerSession,
  place: KeepingPlace,
  keeper: Omit<FileKeeper, "mostKept">,
): AddedSession {
  for (let tries = 1; ; tries++) {
    const added = holdFile(place, { ...keeper, mostKept: mostKeptVersions }, (held) =>
      addTo(held, session, place),
    );
    if (added) return added;
    if (tries === mostTries)
      return refused(problemOf(place, "a file that an editor writes to all the while", "it closed there"));
  }
}

/** @returns undefined where the file changed in the very moment */
function addTo(
  { now, replace }: HeldFile,
  session: LearnerSession,
  place: KeepingPlace,
): AddedSession | undefined {
  if (now.hash === noFile)
    return refused(problemOf(place, "no such file", "the name again: its file is gone"));
  const { learner, problems } = readLearner(now.text, place.file);
  if (!learner) return refused(...problems);
  if (learner.sessions.some((one) => one.case === session.case && one.day === session.day))
    return { kind: "already there", learner };
  const { notes, file, ...fields } = learner;
  const text = writeLearner({ ...fields, sessions: [...fields.sessions, session] }, notes);
  const grown = readLearner(text, file);
  if (!grown.learner) return refused(...grown.problems);
  return replace(text, now.hash).kind === "saved" ? { kind: "kept", learner: grown.learner } : undefined;
}

const refused = (...problems: readonly ContentProblem[]): RefusedFile => ({ kind: "refused", problems });

const problemOf = ({ file }: KeepingPlace, received: string, expected: string): ContentProblem => ({
  file,
  line: 0,
  field: "",
  received,
  expected,
});
