"use server";

import { redirect } from "next/navigation";
import { z } from "zod";
import { keepSettings, type TypedSettings } from "@/app/_data/settings";
import type { ContentProblem } from "@/lib/document/contentProblem";

const line = z.string().max(200).catch("");
const typedSchema = z.object({ name: line, hourCost: line, margin: line });

/** What came back from settings that do not hold: what is wrong, and what was typed. */
export type SettingsAnswer = Readonly<{
  problems: readonly ContentProblem[];
  typed: TypedSettings | undefined;
}>;

/** Keeps what the shop reckons with; what does not hold comes back as it was typed. */
export async function keepShop(_: SettingsAnswer, data: FormData): Promise<SettingsAnswer> {
  const typed = typedSchema.parse(Object.fromEntries(data));
  const { settings, problems } = await keepSettings(typed);
  if (!settings) return { problems, typed };
  redirect("/shop?kept=1");
}
