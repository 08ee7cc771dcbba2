import { cookies } from "next/headers";
import { z } from "zod";

/** Desk is the light room, bench the dark one. */
export const lightSchema = z.enum(["desk", "bench"]);
export type Light = z.infer<typeof lightSchema>;

export const lightCookie = "light";

/** The light that was chosen last on this machine; undefined leaves it to the system. */
export async function readLight(): Promise<Light | undefined> {
  const kept = (await cookies()).get(lightCookie)?.value;
  return lightSchema.safeParse(kept).data;
}
