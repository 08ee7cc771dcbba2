import { z } from "zod";
import { idOf, idSchema, minutesSchema } from "../vocabulary/words";
import { partRefSchema } from "./partRef";

const noteSchema = z.string().trim().max(2000).optional();
const lengthSchema = z.string().trim().min(1).max(40);
/** An amount as it was written, with its unit: `450 ml`, `30 mbar`. */
export const amountSchema = lengthSchema;

/** Where in the stroke (an outcome of the check that reads `place`) and which way it went (of the check that reads `way`). */
const inStroke = { where: idSchema.optional(), way: idSchema.optional() };

/** Something was checked, and this was found. */
export const checkStepSchema = z.looseObject({
  check: idOf("checks"),
  part: partRefSchema.optional(),
  found: idSchema,
  ...inStroke,
  minutes: minutesSchema.default(0),
  note: noteSchema,
});

/** A part was tried in another's place: `swap: [piston 2, casing 1]`. */
export const swapStepSchema = z.looseObject({
  swap: z.tuple([partRefSchema, partRefSchema]),
  found: z.enum(["free", "drags", "sticks"]),
  ...inStroke,
  /** How far the one part was turned in the other: a key of `swapTurns` in reading.yaml. */
  turned: idSchema.optional(),
  minutes: minutesSchema.default(0),
  note: noteSchema,
});

const plugReadingSchema = z.looseObject({
  part: partRefSchema,
  depth: lengthSchema.optional(),
  passes: z.array(lengthSchema).max(40).default([]),
  stops: z.array(lengthSchema).max(40).default([]),
});

/** Plug gauges were tried: which passed and which stopped, against a sound sibling or the piston where measured. */
export const plugStepSchema = z.looseObject({
  plugs: plugReadingSchema,
  reference: plugReadingSchema.optional(),
  piston: z
    .looseObject({ part: partRefSchema, diameter: lengthSchema, plusMinus: lengthSchema.optional() })
    .optional(),
  minutes: minutesSchema.default(0),
  note: noteSchema,
});

/** The bore was measured at several angles (degrees) at one depth. */
export const boreStepSchema = z.looseObject({
  bore: z.looseObject({
    part: partRefSchema,
    depth: lengthSchema.optional(),
    readings: z
      .array(z.looseObject({ angle: z.number().min(-360).max(360), diameter: lengthSchema }))
      .min(1)
      .max(360),
  }),
  minutes: minutesSchema.default(0),
  note: noteSchema,
});

/** A leak was read: by the fall of a pressure, or by the flow that holds one; `sound` is what a sound one leaks. */
export const leakStepSchema = z.looseObject({
  leak: z
    .looseObject({
      volume: amountSchema.optional(),
      first: amountSchema.optional(),
      second: amountSchema.optional(),
      after: amountSchema.optional(),
      flow: amountSchema.optional(),
      at: amountSchema.optional(),
      sound: amountSchema.optional(),
    })
    .refine(
      ({ volume, first, second, after, flow, at }) =>
        [volume, first, second, after].every((amount) => amount !== undefined) ||
        [flow, at].every((amount) => amount !== undefined),
      { error: "volume, first, second and after, or flow and at" },
    ),
  minutes: minutesSchema.default(0),
  note: noteSchema,
});

/** Something was mended, or tried. */
export const repairStepSchema = z.looseObject({
  repair: idOf("repairs"),
  part: partRefSchema.optional(),
  result: z.enum(["fixed", "better", "no-change", "harm"]),
  minutes: minutesSchema.default(0),
  note: noteSchema,
});

/** One step of the path, in the order in which it happened. Which kind it is shows in its first key. */
export const stepSchema = z.union(
  [checkStepSchema, swapStepSchema, plugStepSchema, boreStepSchema, leakStepSchema, repairStepSchema],
  { error: "a step that begins with check, swap, plugs, bore, leak or repair" },
);
export type CheckStep = z.infer<typeof checkStepSchema>;
export type SwapStep = z.infer<typeof swapStepSchema>;
export type PlugStep = z.infer<typeof plugStepSchema>;
export type BoreStep = z.infer<typeof boreStepSchema>;
export type LeakStep = z.infer<typeof leakStepSchema>;
export type RepairStep = z.infer<typeof repairStepSchema>;
export type Step = z.infer<typeof stepSchema>;

/** The first key of each kind of step, in the order of `stepSchema`. */
const stepKinds = ["check", "swap", "plugs", "bore", "leak", "repair"] as const;

/** Names the kinds that an entry of a path means to be: one where it is sound, none where it is no step at all. */
export const kindsOfStep = (entry: unknown) =>
  typeof entry === "object" && entry !== null ? stepKinds.filter((kind) => kind in entry) : [];

/** Where in `stepSchema` the kind of a step stands: its place from 0, or -1 where the entry is no step. */
export const placeOfStepKind = (entry: unknown) => {
  const [kind] = kindsOfStep(entry);
  return kind === undefined ? -1 : stepKinds.indexOf(kind);
};

export const isCheckStep = (step: Step): step is CheckStep => "check" in step;
export const isSwapStep = (step: Step): step is SwapStep => "swap" in step;
export const isPlugStep = (step: Step): step is PlugStep => "plugs" in step;
export const isBoreStep = (step: Step): step is BoreStep => "bore" in step;
export const isLeakStep = (step: Step): step is LeakStep => "leak" in step;
export const isRepairStep = (step: Step): step is RepairStep => "repair" in step;
