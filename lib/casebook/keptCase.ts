import type { Case } from "./caseFile";
import type { Held } from "./lateMap";

/** A case that may still have to be parsed, with what the loading of a casebook needs to know of it before. */
export type KeptCase = Readonly<{
  id: string;
  /** Whether it names photos. */
  isPhotographed: boolean;
  case: Held<Case>;
}>;

/** Keeps a case that has been parsed. */
export const keepCase = (kase: Case): KeptCase => ({
  id: kase.id,
  isPhotographed: (kase.photos ?? []).length > 0,
  case: { value: kase },
});
