import { mostLessonCases } from "@/lib/casebook/lessons/lessonFile";
import { idSchema } from "@/lib/vocabulary/words";

/** A lesson while it is built, as it stands in the address. */
export type BuildQuery = Readonly<{
  /** The lesson that is changed; null for a new one. */
  lesson: string | null;
  /** The hash of the version that is changed; empty for a new one, or where the file has yet to be read. */
  base: string;
  title: string;
  by: string;
  introduction: string;
  cases: readonly string[];
  /** What cases are looked for: words, a family, a cause. */
  find: string;
  family: string | null;
  cause: string | null;
  /** Whether it was to be kept and was not. */
  tried: boolean;
}>;

type Params = Readonly<Record<string, string | readonly string[] | undefined>>;

/** An address has to hold it. Chosen. */
const longestIntroduction = 2000;
const all = (value: Params[string]): readonly string[] =>
  value === undefined ? [] : typeof value === "string" ? [value] : value;
const idOf = (text: string | undefined) => idSchema.safeParse(text).data ?? null;

/**
 * Reads a lesson that is being built from an address or a form; `add`, `drop` and `up` name a case to take in, to take out
 * and to move one place forward.
 */
export function readBuildQuery(params: Params): BuildQuery {
  const one = (name: string, longest: number) => (all(params[name])[0] ?? "").slice(0, longest);
  const kept = all(params.cases).flatMap((id) => idOf(id) ?? []);
  const [add, drop, up] = [idOf(one("add", 64)), idOf(one("drop", 64)), idOf(one("up", 64))];
  const cases = [...new Set([...kept, ...(add === null ? [] : [add])])].filter((id) => id !== drop);
  return {
    lesson: idOf(one("lesson", 64)),
    base: one("base", 64),
    title: one("title", 120),
    by: one("by", 80),
    introduction: one("introduction", longestIntroduction).replaceAll("\r\n", "\n"),
    cases: moveUp(cases, up).slice(0, mostLessonCases),
    find: one("find", 60),
    family: idOf(one("family", 64)),
    cause: idOf(one("cause", 64)),
    tried: params.tried !== undefined,
  };
}

function moveUp(ids: readonly string[], id: string | null): readonly string[] {
  const at = id === null ? -1 : ids.indexOf(id);
  const before = ids[at - 1];
  if (at < 1 || id === null || before === undefined) return ids;
  return [...ids.slice(0, at - 1), id, before, ...ids.slice(at + 1)];
}

/** The address of a lesson that was to be kept and was not: everything that was filled in stands in it. */
export function triedHref({ lesson, base, title, by, introduction, cases }: BuildQuery): string {
  const fields = [
    ...(lesson === null ? [] : [["lesson", lesson]]),
    ["base", base],
    ["title", title],
    ["by", by],
    ["introduction", introduction],
    ...cases.map((id) => ["cases", id]),
    ["tried", "yes"],
  ];
  return `/study/lessons/build?${new URLSearchParams(fields)}`;
}
