import { createHash } from "node:crypto";
import type { Case } from "../../../casebook/caseFile";
import { partOf } from "../../../casebook/lateMap";
import type { Casebook } from "../../../casebook/loadCasebook";
import { readSealed, writeSealed } from "../../../casebook/snapshot/sealedFile";
import type { SnapshotPlace } from "../../../casebook/snapshot/snapshotPlace";
import { vocabularyStamp } from "../../../casebook/snapshot/vocabularyStamp";
import type { Vocabulary } from "../../../vocabulary/vocabulary";
import { isFinished } from "../../record/isFinished";
import { causeModelOf } from "../causeModelOf";
import { type Learned, learnHandbook, type Teaching, takeBackLesson, takeInLesson } from "./learned";
import { packLearned } from "./packLearned";
import { tellSamples } from "./tellSamples";
import { unpackLearned } from "./unpackLearned";

/** Raise it when what was learned is laid out otherwise, or when a lesson comes to mean something else. */
const format = 2;

/** Learns all finished cases of a casebook, the handbook first. */
export function learnCasebook({ cases }: Casebook, teaching: Teaching): Learned {
  const learned = learnHandbook(teaching);
  for (const kase of cases.values()) if (isFinished(kase)) takeInLesson(learned, kase, teaching);
  return learned;
}

/**
 * Gives what the finished cases of a casebook teach: out of the snapshot of an earlier start as far as they are the same,
 * learned anew where there is none, or where much has changed. Then the snapshot is written anew.
 *
 * @param place where the casebook's own snapshot lies; this one lies beside it. Without one nothing is read or written
 * @returns what `learnCasebook` gives, counts the same up to rounding
 */
export function loadLearned(
  casebook: Casebook,
  teaching: Teaching,
  place: SnapshotPlace | undefined,
): Learned {
  const { hashes } = casebook;
  if (place === undefined || hashes === undefined) return learnCasebook(casebook, teaching);
  const own = { ...place, path: `${place.path}.learned` };
  const stamp = JSON.stringify([format, ...whatTeaches(teaching.vocabulary)]);
  const bytes = readSealed(own.path, stamp);
  const recalled = bytes && recall(bytes, casebook, teaching, place.worthWriting);
  if (recalled) return recalled;
  const learned = learnCasebook(casebook, teaching);
  const ids = learned.table.ids.filter((id) => hashes.has(id));
  // A case that the snapshot cannot hold would have to be taken back at the next start, and nobody would know it any more.
  if (ids.length >= place.worthWriting && ids.length === learned.table.ids.length) {
    const marks = new Map(ids.map((id) => [id, hashes.get(id) ?? ""]));
    const told = tellSamples(ids, (id) => casebook.cases.get(id), teaching);
    writeSealed(own, stamp, packLearned(learned, marks, told));
  }
  return learned;
}

/** Stands for all of the handbook that teaches. */
function whatTeaches(vocabulary: Vocabulary) {
  const notes = createHash("sha256")
    .update(JSON.stringify([...vocabulary.causeNotes]))
    .digest("hex");
  return [vocabularyStamp(vocabulary), vocabulary.words, notes] as const;
}

/** Undefined where the bytes are none of that kind, tell of too many other cases, or of lessons learned otherwise. */
function recall(
  bytes: Uint8Array,
  { cases, hashes, former }: Casebook,
  teaching: Teaching,
  mostChanged: number,
): Learned | undefined {
  try {
    const { marks, told, takeUp } = unpackLearned(bytes, teaching.vocabulary);
    const handbook = causeModelOf(teaching.vocabulary);
    const caseOf = (id: string): Case | undefined => {
      const mark = marks.get(id) ?? "";
      return hashes?.get(id) === mark ? cases.get(id) : former?.get(mark);
    };
    if (tellSamples(marks.keys(), caseOf, teaching, handbook) !== told) return undefined;
    const isSame = (id: string) => marks.has(id) && hashes?.get(id) === marks.get(id);
    const stale = [...marks.keys()].filter((id) => !isSame(id));
    const fresh = [...partOf(cases, (id) => !isSame(id)).values()].filter(isFinished);
    if (Math.max(stale.length, fresh.length) >= mostChanged) return undefined;
    const learned = takeUp(handbook);
    for (const id of stale) {
      const before = caseOf(id);
      if (!before) return undefined;
      takeBackLesson(learned, before, teaching);
    }
    for (const kase of fresh) takeInLesson(learned, kase, teaching);
    return learned;
  } catch (error) {
    if (error instanceof Error) return undefined;
    throw error;
  }
}
