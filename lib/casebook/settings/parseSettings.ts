import type { ContentProblem } from "../../document/contentProblem";
import { explainIssues } from "../../document/explainIssues";
import { readYaml } from "../../document/readYaml";
import { settingsFile } from "./settingsFile";
import { type ShopSettings, shopSettingsSchema } from "./shopSettings";

/** What the shop reckons with; undefined where nothing is said yet, or with everything that is wrong with it. */
export type SettingsReading = Readonly<{
  settings: ShopSettings | undefined;
  problems: readonly ContentProblem[];
}>;

/** Reads the text of a settings file, all problems at once. */
export function parseSettings(text: string): SettingsReading {
  const { data, problems, lineOf } = readYaml(text, settingsFile);
  if (problems.length > 0) return { settings: undefined, problems };
  const parsed = shopSettingsSchema.safeParse(data ?? {});
  return parsed.success
    ? { settings: parsed.data, problems: [] }
    : {
        settings: undefined,
        problems: explainIssues(parsed.error.issues, data ?? {}, { file: settingsFile, lineOf }),
      };
}
