import { z } from "zod";
import { idOf, idSchema } from "./words";

/** A finding told in a saying; `words` is the run of the saying that tells it. */
const toldSchema = z.strictObject({
  check: idOf("checks"),
  outcome: idSchema,
  words: z.string().trim().min(1).max(200),
});

/** A check and one of its outcomes in one word: "look-felts worn". */
const findingSchema = z
  .string()
  .regex(/^[a-z0-9-]+ [a-z0-9-]+$/, "a check's id and an outcome's, such as look-felts worn");

/**
 * A note as somebody might write it at the bench, with the findings that a careful reader takes from it. `also` names findings
 * that may fairly be read from it as well, or in place of a neighbour, without being wrong.
 */
export const sayingSchema = z
  .strictObject({
    says: z.string().trim().min(2).max(200),
    instrument: idOf("instruments"),
    means: z.array(toldSchema).default([]),
    also: z.array(findingSchema).default([]),
  })
  .superRefine(({ says, means }, context) => {
    for (const [at, { words: input }] of means.entries()) {
      if (says.includes(input)) continue;
      const path = ["means", at, "words"];
      context.addIssue({ code: "custom", path, message: "words that stand in the saying", input });
    }
  });
export type Saying = z.infer<typeof sayingSchema>;

/** The check and the outcome of a finding in one word. */
export function findingOf(word: string): Readonly<{ check: string; outcome: string }> {
  const [check = "", outcome = ""] = word.split(" ");
  return { check, outcome };
}
