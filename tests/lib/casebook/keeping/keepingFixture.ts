import { writeFileSync } from "node:fs";
import { type Disk, realDisk } from "@/lib/casebook/keeping/disk";
import { keepingPlace } from "@/lib/casebook/keeping/keepingPlace";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { reviseCase } from "@/lib/casebook/keeping/reviseCase";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { temporaryFolder } from "@/tests/fixtures/temporaryFolder";

export const nowMs = Date.UTC(2026, 10, 25, 16, 27, 0);
export const keeper = { vocabulary: smallVocabulary, nowMs, mark: "a" };

/** The good case with another story. */
export const told = (story: string) => change(goodCase, "It was washed and it ran.", story);

/** The good case in a folder of its own. */
export function keptCase() {
  const place = keepingPlace(temporaryFolder(), "24-001");
  writeFileSync(place.path, goodCase);
  return place;
}

/** Saves a story over whatever stands there now. */
export const saveOver = (place: ReturnType<typeof keptCase>, story: string, atMs = nowMs) =>
  reviseCase({ text: told(story), baseHash: readKept(place).hash }, place, { ...keeper, nowMs: atMs });

/** A disk that fails at every write with a code of the system's. */
export const failingDisk = (code: string): Disk => ({
  ...realDisk,
  writeWhole: () => {
    throw Object.assign(new Error(code), { code });
  },
});
