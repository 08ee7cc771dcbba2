import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { type Disk, realDisk } from "@/lib/casebook/keeping/disk";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { reviseCase } from "@/lib/casebook/keeping/reviseCase";
import {
  damagedRevisions,
  leftHalfWritten,
  torturedPlace,
  torturedText,
  torturedVocabulary,
} from "./tortured";

/** What became of a case whose disk was full, at each call that a save makes to it. */
export type FullDisk = Readonly<{
  /** How often the disk said that it is full: once at each call of a save. */
  injected: number;
  saidInWords: number;
  fileHurt: number;
  filesLeftBehind: number;
  /** Saves that were taken once there was room again. */
  savedAfterwards: number;
  revisionsDamaged: number;
}>;

/** Lets the disk be full at one call of a save after another; what is written is cut off in the middle. */
export function fillDisk(folder: string): FullDisk {
  const vocabulary = torturedVocabulary();
  const count = { injected: 0, saidInWords: 0, fileHurt: 0, filesLeftBehind: 0, savedAfterwards: 0 };
  let damaged = 0;
  for (let failing = 1; ; failing++) {
    const own = join(folder, String(failing));
    mkdirSync(own, { recursive: true });
    const place = torturedPlace(own);
    const before = torturedText(vocabulary, 1);
    const after = torturedText(vocabulary, 2);
    writeFileSync(place.path, before);
    const edit = { text: after, baseHash: readKept(place).hash };
    const keeper = { vocabulary, nowMs: Date.now(), mark: "a" };
    const { disk, hasFailed } = fullAt(failing);
    const revised = reviseCase(edit, place, { ...keeper, disk });
    if (!hasFailed()) return { ...count, revisionsDamaged: damaged };
    count.injected += 1;
    if (revised.kind === "refused" && revised.problems[0]?.received === "a full disk") count.saidInWords += 1;
    const standing = readFileSync(place.path, "utf8");
    if (standing !== before && standing !== after) count.fileHurt += 1;
    count.filesLeftBehind += leftHalfWritten(place).length;
    if (reviseCase(edit, place, keeper).kind === "saved") count.savedAfterwards += 1;
    damaged += damagedRevisions(place).length;
  }
}

function fullAt(failing: number): Readonly<{ disk: Disk; hasFailed: () => boolean }> {
  let call = 0;
  const isFull = () => {
    call += 1;
    return call === failing;
  };
  const full = () => Object.assign(new Error("no space left on device"), { code: "ENOSPC" });
  const disk: Disk = {
    ...realDisk,
    makeFolder: (path) => {
      if (isFull()) throw full();
      realDisk.makeFolder(path);
    },
    writeWhole: (path, bytes) => {
      const isCut = isFull();
      realDisk.writeWhole(path, isCut ? bytes.subarray(0, bytes.length / 2) : bytes);
      if (isCut) throw full();
    },
    link: (from, to) => {
      if (isFull()) throw full();
      realDisk.link(from, to);
    },
    rename: (from, to) => {
      if (isFull()) throw full();
      realDisk.rename(from, to);
    },
    flushFolder: (path) => {
      if (isFull()) throw full();
      realDisk.flushFolder(path);
    },
  };
  return { disk, hasFailed: () => call >= failing };
}
