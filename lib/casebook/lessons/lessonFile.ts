import { z } from "zod";
import { idSchema } from "../../vocabulary/words";

/** As many jobs as a lesson may have: more is no lesson but a casebook. Chosen. */
export const mostLessonCases = 60;

/** The front matter of a lesson: jobs in an order. Fields that it does not name are kept; below it stands the word of introduction. */
export const lessonFieldsSchema = z.looseObject({
  id: idSchema,
  title: z.string().trim().min(3).max(120),
  demo: z.boolean().default(false),
  /** Who put it together. */
  by: z.string().trim().min(1).max(80).optional(),
  cases: z
    .array(idSchema)
    .min(1)
    .max(mostLessonCases)
    .refine((ids) => new Set(ids).size === ids.length, { error: "each case once" }),
});
export type LessonFields = z.infer<typeof lessonFieldsSchema>;

/** A lesson as held in memory. */
export type Lesson = LessonFields & Readonly<{ introduction: string; file: string }>;
