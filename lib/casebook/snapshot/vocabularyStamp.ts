import { createHash } from "node:crypto";
import type { Vocabulary } from "../../vocabulary/vocabulary";

/** Stands for all entries of the vocabulary that a case can name: two with the same stamp find the same faults in a case. */
export function vocabularyStamp({ instruments, parts, checks, causes, repairs }: Vocabulary): string {
  const hash = createHash("sha256");
  for (const entries of [instruments, parts, checks, causes, repairs]) {
    hash.update(JSON.stringify([...entries]));
  }
  return hash.digest("hex");
}
