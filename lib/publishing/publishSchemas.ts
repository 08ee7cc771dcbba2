import { z } from "zod";
import { caseFieldsSchema } from "../casebook/caseFile";
import { learnerFieldsSchema } from "../casebook/learners/learnerFile";
import { lessonFieldsSchema } from "../casebook/lessons/lessonFile";
import { shopSettingsSchema } from "../casebook/settings/shopSettings";
import { causeSchema } from "../vocabulary/cause";
import { causeNotesSchema } from "../vocabulary/causeNotes";
import { cautionSchema } from "../vocabulary/caution";
import { checkSchema } from "../vocabulary/check";
import { instrumentSchema } from "../vocabulary/instrument";
import { opinionWeightsSchema } from "../vocabulary/opinionWeights";
import { partSchema } from "../vocabulary/part";
import { readingWeightsSchema } from "../vocabulary/readingWeights";
import { readingWordsSchema } from "../vocabulary/readingWords";
import { repairSchema } from "../vocabulary/repair";
import { sayingSchema } from "../vocabulary/saying";
import type { Vocabulary } from "../vocabulary/vocabulary";
import { wordChangeSchema } from "../vocabulary/wordChange";

/**
 * The content's schemas as JSON Schema 2020-12, by file name, so that an editor completes and checks what is written.
 * Where a field names an entry of the vocabulary the ids there are stand in it as choices.
 */
export function publishSchemas(vocabulary: Vocabulary): ReadonlyMap<string, object> {
  const publish = (schema: z.ZodType) =>
    z.toJSONSchema(schema, {
      io: "input",
      override: ({ jsonSchema }) => {
        const { names } = jsonSchema;
        delete jsonSchema.names;
        const ids = entryKinds.has(names) ? [...vocabulary[names].keys()] : [];
        if (ids.length === 0) return;
        delete jsonSchema.pattern;
        delete jsonSchema.maxLength;
        jsonSchema.enum = ids;
      },
    });
  const list = (schema: z.ZodType) => publish(z.array(schema));
  return new Map([
    ["case", publish(caseFieldsSchema)],
    ["shop", publish(shopSettingsSchema)],
    ["lesson", publish(lessonFieldsSchema)],
    ["learner", publish(learnerFieldsSchema)],
    ["instruments", list(instrumentSchema)],
    ["parts", list(partSchema)],
    ["checks", list(checkSchema)],
    ["causes", list(causeSchema)],
    ["repairs", list(repairSchema)],
    ["cautions", list(cautionSchema)],
    ["sayings", list(sayingSchema)],
    ["notes", list(causeNotesSchema)],
    ["reading", publish(readingWordsSchema)],
    ["weights", publish(opinionWeightsSchema)],
    ["readingWeights", publish(readingWeightsSchema)],
    ["declined-words", list(wordChangeSchema)],
  ]);
}

const kinds = ["instruments", "parts", "checks", "causes", "repairs", "cautions"] as const;
const entryKinds = {
  has: (name: unknown): name is (typeof kinds)[number] => kinds.some((kind) => kind === name),
};
