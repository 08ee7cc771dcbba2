import { randomUUID } from "node:crypto";
import { writeSync } from "node:fs";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { reviseCase } from "@/lib/casebook/keeping/reviseCase";
import { torturedPlace, torturedText, torturedVocabulary } from "./tortured";

const standardOutput = 1;

/**
 * Saves one version after another and says the number of each once it is acknowledged, until the program is killed.
 *
 * @param from the number of the first version
 */
export function saveUntilKilled(folder: string, from: number): never {
  const vocabulary = torturedVocabulary();
  const place = torturedPlace(folder);
  writeSync(standardOutput, "ready\n");
  for (let version = from; ; version++) {
    const text = torturedText(vocabulary, version);
    const revised = reviseCase({ text, baseHash: readKept(place).hash }, place, {
      vocabulary,
      nowMs: Date.now(),
      mark: randomUUID(),
    });
    if (revised.kind !== "saved") {
      throw new Error(
        `a save with nobody else about must be taken; got ${JSON.stringify(revised).slice(0, 300)}`,
      );
    }
    writeSync(standardOutput, `${version}\n`);
  }
}
