import "server-only";
import { randomUUID } from "node:crypto";
import { dirname } from "node:path";
import { numberIn, wordsIn } from "@/lib/casebook/form/fieldTexts";
import type { SettingsReading } from "@/lib/casebook/settings/parseSettings";
import { readSettings } from "@/lib/casebook/settings/readSettings";
import { writeSettings } from "@/lib/casebook/settings/writeSettings";
import { getShop } from "./shop";

/** What the shop reckons with, as typed. */
export type TypedSettings = Readonly<{ name: string; hourCost: string; margin: string }>;

/** Where the settings lie: in the content folder, over the cases. */
const contentFolder = async () => dirname((await getShop()).casesFolder);

/** What the shop reckons with, as it stands on disk now. */
export async function getSettings(): Promise<SettingsReading> {
  return readSettings(await contentFolder());
}

/** Writes what the shop reckons with from what was typed. */
export async function keepSettings({ name, hourCost, margin }: TypedSettings): Promise<SettingsReading> {
  const sent = { name: wordsIn(name), hourCost: numberIn(hourCost), margin: numberIn(margin) };
  return writeSettings(sent, await contentFolder(), randomUUID());
}
