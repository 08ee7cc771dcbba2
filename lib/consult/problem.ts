import { z } from "zod";

const wordsSchema = z.string().trim().max(8000);
const shortSchema = z.string().trim().min(1).max(400);
/** A length as it was written, its unit with it. */
export const lengthSchema = z.union([z.string().trim().min(1).max(40), z.number()]).transform(String);

const plugReadingSchema = z.object({
  part: shortSchema,
  depth: lengthSchema.optional(),
  passes: z.array(lengthSchema).max(40).default([]),
  stops: z.array(lengthSchema).max(40).default([]),
});

/** Plugs tried in one bore, with a sound sibling and the piston where they were measured. */
export const gaugeInputSchema = plugReadingSchema.extend({
  reference: plugReadingSchema.partial({ part: true }).optional(),
  piston: z
    .object({ part: shortSchema.optional(), diameter: lengthSchema, plusMinus: lengthSchema.optional() })
    .optional(),
});

/** Diameters of one bore at several angles, in degrees. */
export const diametersInputSchema = z.object({
  part: shortSchema,
  depth: lengthSchema.optional(),
  readings: z.array(z.object({ angle: z.number(), diameter: lengthSchema })).max(360),
});

/** Part a tried in part b's place; `where` tells what the result depended on: the place, the way, how far it was turned. */
export const swapInputSchema = z.object({
  a: shortSchema,
  b: shortSchema,
  result: z.enum(["free", "drags", "sticks"]),
  where: shortSchema.optional(),
});

/**
 * What comes to the bench: the technician's own words, and readings where there are any.
 * Words may be ids; lengths carry their unit.
 */
export const problemSchema = z
  .object({
    id: z.union([z.string(), z.number()]).transform(String).optional(),
    instrument: wordsSchema.optional(),
    says: wordsSchema.optional(),
    evidence: z
      .array(z.object({ check: shortSchema, found: shortSchema, part: shortSchema.optional() }))
      .max(200)
      .default([]),
    /** Findings of the free text to leave out: `check` or `check part`, as the answer names them; a swap test by `swap piston 2 in casing 1`. */
    leaveOut: z.array(shortSchema).max(200).default([]),
    gauges: z.array(gaugeInputSchema).max(40).default([]),
    diameters: z.array(diametersInputSchema).max(40).default([]),
    swaps: z.array(swapInputSchema).max(100).default([]),
  })
  .refine(({ says, evidence }) => says !== undefined || evidence.length > 0, {
    error: "either says (free text) or evidence (checks with what was found) must be there",
  });
export type Problem = z.infer<typeof problemSchema>;
/** A problem as it may be written, before defaults are filled in. */
export type ProblemInput = z.input<typeof problemSchema>;
