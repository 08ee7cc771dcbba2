import type { ContentProblem } from "../../document/contentProblem";
import type { Vocabulary } from "../../vocabulary/vocabulary";
import type { Case } from "../caseFile";
import type { ContentFolders } from "../files/contentFolder";
import type { Casebook } from "../loadCasebook";

/** What becomes of one file of an archive; one that differs from what has its place is left, as is one that is refused. */
export type TakenFile =
  | Readonly<{ path: string; state: "new" | "there already" }>
  | Readonly<{ path: string; state: "differs" | "refused"; problems: readonly ContentProblem[] }>;

/** Where an archive is taken in. Without `write` everything is looked at and nothing is written. */
export type ArchiveTaking = Readonly<{
  folders: ContentFolders;
  casebook: Pick<Casebook, "cases">;
  vocabulary: Vocabulary;
  write: boolean;
  mark: string;
  /** Told of every case that was saved. */
  onSaved?: (kase: Case) => void;
}>;
