import type { Check } from "./check";
import type { Vocabulary } from "./vocabulary";

/** The check that takes readings of a kind (`place`, `way`, `swap` ...); undefined where the vocabulary has none. */
export const checkThatReads = (
  { checks }: Pick<Vocabulary, "checks">,
  reads: NonNullable<Check["reads"]>,
): Check | undefined => [...checks.values()].find((check) => check.reads === reads);
