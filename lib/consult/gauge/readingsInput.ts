import { z } from "zod";
import { amountSchema } from "../../casebook/step";
import { diametersInputSchema, gaugeInputSchema, lengthSchema, swapInputSchema } from "../problem";

/** How far the two legs of a slide stand apart at several places down it, outside to outside or between, but always alike. */
const legsInputSchema = z.object({
  part: gaugeInputSchema.shape.part,
  plusMinus: lengthSchema.optional(),
  readings: z.array(z.object({ at: lengthSchema, across: lengthSchema })).max(40),
});

/** A leak by the fall of a pressure or by a flow, and what a sound one leaks. */
const leakInputSchema = z.object({
  volume: amountSchema.optional(),
  first: amountSchema.optional(),
  second: amountSchema.optional(),
  after: amountSchema.optional(),
  flow: amountSchema.optional(),
  at: amountSchema.optional(),
  sound: amountSchema.optional(),
});

/**
 * Readings without a case: plugs, diameters and swap tests as in a problem, slide legs and leaks. What else a problem may say is let by unread,
 * so that one file serves both commands; a key that is none of these is a slip.
 */
export const readingsSchema = z
  .strictObject({
    id: z.union([z.string(), z.number()]).transform(String).optional(),
    instrument: z.string().trim().max(8000).optional(),
    says: z.unknown().optional(),
    evidence: z.unknown().optional(),
    leaveOut: z.unknown().optional(),
    gauges: z.array(gaugeInputSchema).max(40).default([]),
    diameters: z.array(diametersInputSchema).max(40).default([]),
    swaps: z.array(swapInputSchema).max(100).default([]),
    legs: z.array(legsInputSchema).max(10).default([]),
    leaks: z.array(leakInputSchema).max(10).default([]),
  })
  .refine(
    ({ gauges, diameters, swaps, legs, leaks }) =>
      [gauges, diameters, swaps, legs, leaks].some((readings) => readings.length > 0),
    { error: "at least one reading under gauges, diameters, swaps, legs or leaks" },
  );
export type ReadingsInput = z.infer<typeof readingsSchema>;
