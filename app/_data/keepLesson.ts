import "server-only";
import { randomUUID } from "node:crypto";
import { idOfName } from "@/lib/casebook/files/idOfName";
import { noFile } from "@/lib/casebook/keeping/contentHash";
import { keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { readKept } from "@/lib/casebook/keeping/readKept";
import type { RevisedFile } from "@/lib/casebook/keeping/reviseFile";
import { checkLesson, type LessonEdit, saveLesson } from "@/lib/casebook/lessons/saveLesson";
import { isFitForStudy } from "@/lib/study/jobs/isFitForStudy";
import { lessonOf, lessonShelf } from "./lessonShelf";
import { getShop } from "./shop";

/** A lesson as it was filled in; `lesson` null for a new one, `base` the hash of the version that was changed. */
export type SentLesson = Readonly<{
  lesson: string | null;
  base: string;
  title: string;
  by: string;
  introduction: string;
  cases: readonly string[];
}>;

/** Keeps a lesson, new under an id made of its title, or over the version that was changed. */
export async function keepLesson(sent: SentLesson): Promise<Readonly<{ id: string; revised: RevisedFile }>> {
  const edit = editOf(sent);
  const keeper = { nowMs: Date.now(), mark: randomUUID() };
  const revised = saveLesson(edit, lessonShelf().folder, await fitness(), keeper);
  return { id: edit.fields.id, revised };
}

/** What stands in the way of a lesson: what is wrong with it, or that its file is no longer the one that was changed. */
export async function whatHinders(sent: SentLesson): Promise<RevisedFile> {
  const edit = editOf(sent);
  const { text, problems } = checkLesson(edit, await fitness());
  if (problems.length > 0) return { kind: "refused", problems };
  const now = readKept(keepingPlace(lessonShelf().folder, edit.fields.id));
  if (now.hash !== edit.baseHash)
    return { kind: "conflict", mine: text, theirs: now.text, theirHash: now.hash };
  const received = "a disk that could not be written to";
  const expected = "nothing new: see that there is room and leave to write, then keep it again";
  return {
    kind: "refused",
    problems: [{ file: `${edit.fields.id}.md`, line: 0, field: "", received, expected }],
  };
}

/** The hash of a lesson's file as it stands now. */
export const hashOfLesson = (id: string) => readKept(keepingPlace(lessonShelf().folder, id)).hash;

function editOf({ lesson, base, title, by, introduction, cases }: SentLesson): LessonEdit {
  const taken = new Set(
    lessonShelf()
      .all()
      .entries.map(({ id }) => id),
  );
  const id = lesson ?? idOfName(title, taken, "lesson");
  const { introduction: _, file: __, ...before } = lessonOf(lesson) ?? { introduction: "", file: "" };
  const fields = {
    demo: false,
    ...before,
    id,
    title,
    by: by.trim() === "" ? undefined : by,
    cases: [...cases],
  };
  return { fields, introduction, baseHash: lesson === null ? noFile : base };
}

async function fitness(): Promise<(id: string) => boolean> {
  const { bench } = await getShop();
  return (id) => {
    const kase = bench.cases.get(id);
    return kase !== undefined && isFitForStudy(kase);
  };
}
