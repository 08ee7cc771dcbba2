import { z } from "zod";
import {
  idOf,
  idSchema,
  minutesSchema,
  proseSchema,
  riskSchema,
  sourceSchema,
  synonymsSchema,
  toldAsSchema,
} from "./words";

/**
 * What a measured value must be for an outcome to hold, in thousandths of an inch:
 * wholly at or over `overThou` and wholly under `underThou`. For swap tests `suspect` names the part left in suspicion;
 * for a check that a repair answers (`triedBy`) `results` names how that repair ended.
 */
const measuredSchema = z.strictObject({
  overThou: z.number().optional(),
  underThou: z.number().optional(),
  suspect: z.enum(["guest", "host", "pair"]).optional(),
  results: z.array(z.enum(["fixed", "better", "no-change", "harm"])).optional(),
});

/** One of the answers a check can give; the outcomes of a check exclude one another. */
export const outcomeSchema = z.strictObject({
  id: idSchema,
  label: z.string().min(2),
  synonyms: synonymsSchema,
  /** Notes from which this outcome would be read, by themselves and in the bench's own words. */
  toldAs: toldAsSchema,
  /** What it means when somebody says it is not so; default: the check's normal outcome. */
  denied: idSchema.optional(),
  /** Findings in the same sentence beside which the words do not mean this: "all three run free" counts no trouble. */
  unless: z.array(z.strictObject({ check: idOf("checks"), outcome: idSchema })).default([]),
  measured: measuredSchema.optional(),
});
export type Outcome = z.infer<typeof outcomeSchema>;

/**
 * Which kind of reading a check stands for: `place` and `way` in the stroke, `travel` of a pair in its own place, `swap`
 * tests, and what gauges measure.
 */
const readsSchema = z.enum(["place", "way", "travel", "swap", "reduction", "clearance", "ovality", "splay"]);

/**
 * Something one does to learn something.
 * `normal` names the outcome of a sound instrument; `ordered` says that the outcomes stand on a scale, best to worst;
 * `needs` names checks that must come first because they open the way.
 */
export const checkSchema = z.strictObject({
  id: idSchema,
  label: z.string().min(2).max(60),
  question: z.string().min(5).max(160),
  synonyms: synonymsSchema,
  families: z.array(idOf("instruments")).min(1),
  parts: z.array(idOf("parts")).min(1),
  risk: riskSchema,
  minutes: minutesSchema,
  needs: z.array(idOf("checks")).default([]),
  tools: z.array(z.string()).default([]),
  how: proseSchema,
  ordered: z.boolean().default(false),
  normal: idSchema.optional(),
  reads: readsSchema.optional(),
  /** Repairs whose result answers this check: cleaning that changed nothing is a finding too. */
  triedBy: z.array(idOf("repairs")).default([]),
  outcomes: z.array(outcomeSchema).min(2).max(9),
  cautions: z.array(idOf("cautions")).default([]),
  source: sourceSchema,
});
export type Check = z.infer<typeof checkSchema>;
