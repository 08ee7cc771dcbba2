"use server";

import { cookies } from "next/headers";
import { lightCookie, lightSchema } from "./readLight";

const yearSeconds = 365 * 24 * 60 * 60;

/** Keeps the chosen light for a year; the page comes back in it, with or without JavaScript. */
export async function setLight(form: FormData): Promise<void> {
  const light = lightSchema.safeParse(form.get("light"));
  if (!light.success) return;
  (await cookies()).set(lightCookie, light.data, { maxAge: yearSeconds, sameSite: "lax", httpOnly: true });
}
