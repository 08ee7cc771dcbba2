import type { AnswerRow } from "@/lib/study/answer/settleAnswer";
import { idSchema } from "@/lib/vocabulary/words";

export type SearchParams = Readonly<Record<string, string | readonly string[] | undefined>>;

/** A study session, as it stands in the address. */
export type StudyQuery = Readonly<{
  /** Null where any family will do. */
  family: string | null;
  /** Drawn once a sitting; with the turn it decides which case comes. Null before the sitting has begun. */
  seed: number | null;
  turn: number;
  case: string | null;
  /** Checks asked for, in their order. */
  asked: readonly string[];
  /** The answer as it was filled in, sound or not. */
  rows: readonly AnswerRow[];
  repair: string | null;
  first: string | null;
  answered: boolean;
  /** The lesson that is gone through; its cases come in its order. */
  lesson: string | null;
  /** Whether the answer could not be written down. */
  unkept: boolean;
  /** Words by which checks are looked for, where the page is not awake. */
  find: string;
  /** The group of checks that the last one was asked from: it stays open. */
  from: string | null;
}>;

/** As many causes as an answer may name. */
const mostNamed = 3;
/** A sitting's seed is drawn from under this. */
export const seeds = 2 ** 31;
/** More than any job calls for: a longer address is not read to its end. */
const mostAsked = 100;
const longestSure = 12;
const longestFind = 60;

const all = (value: SearchParams[string]): readonly string[] =>
  value === undefined ? [] : typeof value === "string" ? [value] : value;
const idOf = (text: string | undefined) => idSchema.safeParse(text).data ?? null;
const countOf = (text: string | undefined) =>
  text !== undefined && /^\d{1,10}$/.test(text) ? Number(text) : null;

/**
 * Reads a study session from an address. What cannot be read is passed over: a cut-off link still opens.
 *
 * @param params `family`, `seed`, `turn`, `case`, any number of `ask`, up to three pairs of `cause` and `sure`, `repair`,
 *   `first`, and `answer` once it was given; `lesson`, `unkept`, `find` and `from`
 */
export function readStudyQuery(params: SearchParams): StudyQuery {
  const causes = all(params.cause).slice(0, mostNamed);
  const sures = all(params.sure).slice(0, mostNamed);
  return {
    family: idOf(all(params.family)[0]),
    seed: countOf(all(params.seed)[0]),
    turn: countOf(all(params.turn)[0]) ?? 0,
    case: idOf(all(params.case)[0]),
    asked: all(params.ask)
      .slice(0, mostAsked)
      .flatMap((id) => idOf(id) ?? []),
    rows: Array.from({ length: mostNamed }, (_, at) => ({
      cause: idOf(causes[at]) ?? "",
      sure: (sures[at] ?? "").slice(0, longestSure),
    })),
    repair: idOf(all(params.repair)[0]),
    first: idOf(all(params.first)[0]),
    answered: params.answer !== undefined,
    lesson: idOf(all(params.lesson)[0]),
    unkept: params.unkept !== undefined,
    find: (all(params.find)[0] ?? "").slice(0, longestFind),
    from: idOf(all(params.from)[0]),
  };
}

type Session = Pick<StudyQuery, "family" | "seed" | "turn" | "case" | "asked" | "lesson">;

/** The fields of a session as a form or an address carries them along; what has been answered is not among them. */
export const sessionFields = ({
  family,
  seed,
  turn,
  case: id,
  asked,
  lesson,
}: Session): (readonly [string, string])[] => [
  ...(family === null ? [] : [["family", family] as const]),
  ...(seed === null ? [] : [["seed", String(seed)] as const]),
  ...(turn === 0 ? [] : [["turn", String(turn)] as const]),
  ...(lesson === null ? [] : [["lesson", lesson] as const]),
  ...(id === null ? [] : [["case", id] as const]),
  ...asked.map((check) => ["ask", check] as const),
];

/** The address of a session. */
export const studyHref = (session: Session) =>
  `/study?${new URLSearchParams(sessionFields(session).map(([name, value]) => [name, value]))}`;

/**
 * The address of the session with one check more asked for, at the place where its answer stands.
 *
 * @param from the group that it stands in
 */
export const askHref = (query: StudyQuery, check: string, from: string) =>
  `${studyHref({ ...query, asked: [...query.asked, check] })}&from=${from}#last`;

/** The address of a session once it is answered, whether or not that could be written down. */
export const answerHref = (query: StudyQuery, { kept }: Readonly<{ kept: boolean }>) => {
  const said = query.rows.flatMap(({ cause, sure }) => [
    ["cause", cause],
    ["sure", sure],
  ]);
  const proposed = [
    ["repair", query.repair ?? ""],
    ["first", query.first ?? ""],
  ];
  const end = [...(kept ? [] : [["unkept", "yes"]]), ["answer", "yes"]];
  return `/study?${new URLSearchParams([...sessionFields(query).map(([name, value]) => [name, value]), ...said, ...proposed, ...end])}`;
};

/** The address at which the sitting goes on with another case. */
export const nextCaseHref = ({ family, seed, turn }: StudyQuery, freshSeed: number) =>
  studyHref({
    ...freshSession,
    family,
    seed: seed ?? freshSeed,
    turn: seed === null ? 0 : turn + 1,
  });

const freshSession: Session = { family: null, seed: null, turn: 0, case: null, asked: [], lesson: null };

/** The address of one case, by itself or in a lesson. */
export const caseHref = (id: string, lesson: string | null = null) =>
  studyHref({ ...freshSession, case: id, lesson });

/** The address at which a sitting begins. */
export const sittingHref = (family: string | null, seed: number) =>
  studyHref({ ...freshSession, family, seed });
