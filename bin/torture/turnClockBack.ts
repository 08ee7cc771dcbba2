import { mkdirSync } from "node:fs";
import { listRevisions } from "@/lib/casebook/keeping/listRevisions";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { readRevision } from "@/lib/casebook/keeping/readRevision";
import { reviseCase } from "@/lib/casebook/keeping/reviseCase";
import { torturedPlace, torturedText, torturedVocabulary } from "./tortured";

/** What became of the order of versions while the clock went back at every save. */
export type ClockBack = Readonly<{ saves: number; versionsKept: number; outOfOrder: number }>;

const startMs = Date.UTC(2026, 0, 31);
const backMs = 3_600_000;

/** Saves with a clock that goes back an hour each time; the versions must still stand in the order of saving. */
export function turnClockBack(folder: string, saves: number): ClockBack {
  mkdirSync(folder, { recursive: true });
  const vocabulary = torturedVocabulary();
  const place = torturedPlace(folder);
  const texts = Array.from({ length: saves }, (_, version) => torturedText(vocabulary, version, [], 5));
  for (const [at, text] of texts.entries()) {
    const keeper = { vocabulary, nowMs: startMs - at * backMs, mark: "a" };
    reviseCase({ text, baseHash: readKept(place).hash }, place, keeper);
  }
  const kept = listRevisions(place)
    .map(({ number }) => readRevision(place, number))
    .reverse();
  return {
    saves,
    versionsKept: kept.length,
    outOfOrder: texts.filter((text, at) => kept[at] !== text).length,
  };
}
