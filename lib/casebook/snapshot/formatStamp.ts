import { createHash } from "node:crypto";
import { z } from "zod";
import { caseFieldsSchema } from "../caseFile";

/** Raise it when a snapshot is laid out otherwise, or when a case file comes to mean something else than before. */
const format = 2;

/**
 * Tells whether two versions of Benchlore read case files alike, as far as that shows: the format's number and the schema.
 * What does not show in the schema is left to `agreesWithFiles`.
 */
export function formatStamp(): string {
  const schema = JSON.stringify(z.toJSONSchema(caseFieldsSchema, { unrepresentable: "any" }));
  return `${format}-${createHash("sha256").update(schema).digest("hex").slice(0, 16)}`;
}
