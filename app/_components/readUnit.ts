import { cookies } from "next/headers";
import { z } from "zod";

/** How lengths are written and shown: in inches and thou, or in millimetres. */
export const unitSchema = z.enum(["inch", "mm"]);
export type ShownUnit = z.infer<typeof unitSchema>;

export const unitCookie = "lengths";

/**
 * The unit that was chosen last on this machine.
 *
 * @param otherwise until one was chosen; default inches
 */
export async function readUnit(otherwise: ShownUnit = "inch"): Promise<ShownUnit> {
  const kept = (await cookies()).get(unitCookie)?.value;
  return unitSchema.safeParse(kept).data ?? otherwise;
}
