"use server";

import { cookies } from "next/headers";
import { unitCookie, unitSchema } from "./readUnit";

const yearSeconds = 365 * 24 * 60 * 60;

/** Keeps the chosen unit of lengths for a year; the page comes back in it, with or without JavaScript. */
export async function setUnit(form: FormData): Promise<void> {
  const unit = unitSchema.safeParse(form.get("unit"));
  if (!unit.success) return;
  (await cookies()).set(unitCookie, unit.data, { maxAge: yearSeconds, sameSite: "lax", httpOnly: true });
}
