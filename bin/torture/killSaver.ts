import { mkdirSync } from "node:fs";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { loadCasebook } from "@/lib/casebook/loadCasebook";
import { startSelf } from "./startSelf";
import {
  damagedRevisions,
  leftHalfWritten,
  torturedPlace,
  torturedText,
  torturedVocabulary,
} from "./tortured";

/** Longest life of a saving program after it is ready, milliseconds. */
const longestLifeMs = 600;

/** What became of a case whose saving programs were killed. */
export type Kills = Readonly<{
  kills: number;
  acknowledgedSaves: number;
  /** Kills that fell into a save: it was not acknowledged but stands whole, or what it left half written lay about. */
  killsWithinSave: number;
  halfWritten: number;
  acknowledgedSavesLost: number;
  revisionsDamaged: number;
}>;

/**
 * Kills a saving program with SIGKILL at random moments, again and again, until so many saves were acknowledged, and looks
 * each time whether the file is whole and holds the last save that was acknowledged, or the one after it.
 *
 * @param random numbers in 0..1, for the moments
 */
export async function killSaver(folder: string, saves: number, random: () => number): Promise<Kills> {
  const vocabulary = torturedVocabulary();
  const place = torturedPlace(folder);
  mkdirSync(folder, { recursive: true });
  const count = {
    kills: 0,
    acknowledgedSaves: 0,
    killsWithinSave: 0,
    halfWritten: 0,
    acknowledgedSavesLost: 0,
  };
  let standing = 0;
  while (count.acknowledgedSaves < saves) {
    const acknowledged = await killOnce(folder, standing + 1, longestLifeMs * random());
    count.kills += 1;
    count.acknowledgedSaves += acknowledged.length;
    const last = acknowledged.at(-1) ?? standing;
    const { text } = readKept(place);
    const found = [last, last + 1].find((version) => text === torturedText(vocabulary, version));
    const isBlank = text === "" && last === 0;
    if (found === undefined && !isBlank) {
      if (/^title: Version \d+$/m.test(text) && loads(folder, vocabulary)) count.acknowledgedSavesLost += 1;
      else count.halfWritten += 1;
    }
    if (!isBlank && !loads(folder, vocabulary)) count.halfWritten += 1;
    if (found === last + 1 || leftHalfWritten(place).length > 0) count.killsWithinSave += 1;
    standing = found ?? last;
  }
  return { ...count, revisionsDamaged: damagedRevisions(place).length };
}

const loads = (folder: string, vocabulary: ReturnType<typeof torturedVocabulary>) => {
  const { cases, problems } = loadCasebook(folder, vocabulary);
  return cases.size === 1 && problems.length === 0;
};

/** Starts a saving program, kills it so many milliseconds after it is ready, and lists the versions that it acknowledged. */
function killOnce(folder: string, from: number, lifeMs: number): Promise<number[]> {
  return new Promise((resolve, reject) => {
    const child = startSelf(["--saver", folder, String(from)]);
    let said = "";
    child.stdout?.on("data", (words) => {
      if (said === "") setTimeout(() => child.kill("SIGKILL"), lifeMs);
      said += words;
    });
    child.on("error", reject);
    child.on("close", (code) => {
      if (code !== null) {
        reject(new Error(`the saving program must live until it is killed; it ended with ${code}`));
        return;
      }
      // A number without its line end was cut off in the saying.
      resolve(said.split("\n").slice(1, -1).map(Number));
    });
  });
}
