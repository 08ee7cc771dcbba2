import { spawnSync } from "node:child_process";
import { mkdirSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { reviseCase } from "@/lib/casebook/keeping/reviseCase";
import {
  damagedRevisions,
  leftHalfWritten,
  torturedPlace,
  torturedText,
  torturedVocabulary,
} from "./tortured";

/** What became of a case on a small disk that really filled up. */
export type RealFullDisk = Readonly<{
  savesBeforeFull: number;
  saidInWords: boolean;
  fileIsLastSaved: boolean;
  filesLeftBehind: number;
  revisionsDamaged: number;
}>;

const diskSize = "1m";
const mostSaves = 1000;

/**
 * Has a small disk of its own filled up by saves, in a mount namespace that no other program sees.
 *
 * @returns in words why not, where the system does not let one mount
 */
export function fillRealDisk(folder: string): RealFullDisk | string {
  mkdirSync(folder, { recursive: true });
  const program = fileURLToPath(new URL("../torture.ts", import.meta.url));
  const inside = `mount -t tmpfs -o size=${diskSize} tmpfs "$1" && exec "$2" --import tsx "$3" --fill "$1"`;
  const ways = [["--mount"], ["--mount", "--map-root-user"]];
  for (const way of ways) {
    const args = [...way, "sh", "-c", inside, "sh", folder, process.execPath, program];
    const { status, stdout } = spawnSync("unshare", args, { encoding: "utf8" });
    if (status === 0) return JSON.parse(stdout);
  }
  return "mounting is not allowed here: the full disk was injected only";
}

/** Saves on the small disk until it is full; run inside its namespace. */
export function fillUp(folder: string): RealFullDisk {
  const vocabulary = torturedVocabulary();
  const place = torturedPlace(folder);
  let standing = "";
  for (let version = 1; version <= mostSaves; version++) {
    const text = torturedText(vocabulary, version);
    const keeper = { vocabulary, nowMs: Date.now(), mark: String(version) };
    const revised = reviseCase({ text, baseHash: readKept(place).hash }, place, keeper);
    if (revised.kind === "saved") {
      standing = text;
      continue;
    }
    return {
      savesBeforeFull: version - 1,
      saidInWords: revised.kind === "refused" && revised.problems[0]?.received === "a full disk",
      fileIsLastSaved: readKept(place).text === standing,
      filesLeftBehind: leftHalfWritten(place).length,
      revisionsDamaged: damagedRevisions(place).length,
    };
  }
  throw new Error(`a disk of ${diskSize} must be full after ${mostSaves} saves; it was not; make it smaller`);
}
