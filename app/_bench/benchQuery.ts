import { z } from "zod";
import { partRefSchema } from "@/lib/casebook/partRef";
import { idSchema } from "@/lib/vocabulary/words";

/** A finding that was tapped, or corrected by a tap. */
export type TappedFinding = Readonly<{ check: string; outcome: string; part: string | null }>;

/** What a swap's result depended on: outcomes of the checks that read place and way, and how far it was turned. */
export type TappedHow = Readonly<{ where: string | null; way: string | null; turned: string | null }>;

/** Guest tried in host's place. */
export type TappedSwap = TappedHow & Readonly<{ guest: string; host: string; result: SwapResult }>;

export const swapResultSchema = z.enum(["free", "drags", "sticks"]);
export type SwapResult = z.infer<typeof swapResultSchema>;

/** Everything on the bench, as it stands in the address. */
export type BenchQuery = Readonly<{
  says: string;
  instrument: string | null;
  findings: readonly TappedFinding[];
  /** `check` or `check part`, as the answer names them. */
  leftOut: readonly string[];
  swaps: readonly TappedSwap[];
}>;

export type SearchParams = Readonly<Record<string, string | readonly string[] | undefined>>;

/** As many characters as a problem's free text may have. */
export const longestSays = 8000;
const mostOfAKind = 100;

const findingSchema = z
  .tuple([idSchema, idSchema, partRefSchema.optional()])
  .transform(([check, outcome, part]): TappedFinding => ({ check, outcome, part: part ?? null }));

const idOrNone = z.union([idSchema, z.literal("").transform(() => null)]).default(null);
const swapSchema = z
  .tuple([partRefSchema, partRefSchema, swapResultSchema, idOrNone, idOrNone, idOrNone])
  .transform(
    ([guest, host, result, where, way, turned]): TappedSwap => ({ guest, host, result, where, way, turned }),
  );

const leftOutSchema = z
  .string()
  .regex(/^[a-z0-9-]+( [a-z0-9 -]+)?$/)
  .max(150);

const all = (value: SearchParams[string]): readonly string[] =>
  value === undefined ? [] : typeof value === "string" ? [value] : value;

/**
 * Reads the bench from an address. What cannot be read is passed over: a cut-off link still opens.
 *
 * @param params the address's search parameters: `says`, `instrument`, and any number of
 *   `e=check:outcome:part`, `x=check part`, `swap=piston 2|casing 1|free|where|way|turned`
 */
export function readBenchQuery(params: SearchParams): BenchQuery {
  const each = <T>(key: string, read: (text: string) => z.ZodSafeParseResult<T>): T[] =>
    all(params[key])
      .slice(0, mostOfAKind)
      .flatMap((text) => read(text).data ?? []);
  return {
    says: (all(params.says)[0] ?? "").replaceAll("\r\n", "\n").slice(0, longestSays),
    instrument: idSchema.safeParse(all(params.instrument)[0]).data ?? null,
    findings: each("e", (text) => findingSchema.safeParse(text.split(":"))),
    leftOut: each("x", (text) => leftOutSchema.safeParse(text)),
    swaps: each("swap", (text) => swapSchema.safeParse([...text.split("|"), "", "", ""].slice(0, 6))),
  };
}

/** Tells whether an address asks for the whole plan. It is no part of the bench: whatever changes there folds the plan away. */
export const asksForPlan = ({ plan }: SearchParams) => all(plan)[0] === "1";
