import type { TakenFile } from "./archiveTaking";

/** Why a file of an archive was left: where, what was found there, and what to write instead. */
export type LeftFile = Readonly<{ path: string; where: string; found: string; write: string }>;

/** What became of the files of an archive. */
export type ArchiveReport = Readonly<{
  /** Paths of what was new, and of what was there already to the byte. */
  fresh: readonly string[];
  same: readonly string[];
  /** What has its place already and is not the same: that was left as it was. */
  differing: readonly LeftFile[];
  refused: readonly LeftFile[];
}>;

/** Sorts what became of the files of an archive; one with several problems stands once for each. */
export function reportTaking(taken: readonly TakenFile[]): ArchiveReport {
  const paths = (state: TakenFile["state"]) =>
    taken.filter((file) => file.state === state).map(({ path }) => path);
  const left = (state: "differs" | "refused") =>
    taken.flatMap((file) =>
      file.state === state
        ? file.problems.map(({ file: at, line, field, received, expected }) => ({
            path: file.path,
            where: [line > 0 ? `${at}:${line}` : at, field].filter(Boolean).join(" "),
            found: received,
            write: expected,
          }))
        : [],
    );
  return {
    fresh: paths("new"),
    same: paths("there already"),
    differing: left("differs"),
    refused: left("refused"),
  };
}
