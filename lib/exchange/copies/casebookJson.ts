import type { Case } from "../../casebook/caseFile";

/**
 * A whole casebook as plain data: each case with its front matter's fields and its story, by id. The fields are those that
 * `content/schema/case.schema.json` describes.
 */
export type CasebookJson = Readonly<{
  form: "Benchlore casebook";
  version: 1;
  cases: readonly (Omit<Case, "file"> & Readonly<Record<string, unknown>>)[];
}>;

/** Lays a casebook out as plain data; the same cases give the same text whatever order they were loaded in. */
export function casebookJson(cases: Iterable<Case>): CasebookJson {
  const sorted = [...cases].sort((a, b) => (a.id < b.id ? -1 : 1));
  return { form: "Benchlore casebook", version: 1, cases: sorted.map(({ file: _, ...kase }) => kase) };
}
