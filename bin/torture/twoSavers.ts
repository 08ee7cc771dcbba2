import { mkdirSync, writeFileSync } from "node:fs";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { startSelf } from "./startSelf";
import { damagedRevisions, torturedPlace, torturedText, torturedVocabulary } from "./tortured";

/** What became of a case that two programs wrote to at once. */
export type TwoSavers = Readonly<{
  saves: number;
  conflictsFound: number;
  linesLost: number;
  linesTwice: number;
  revisionsDamaged: number;
}>;

/** Lets two programs add lines to one case at once; each line must stand in it once, whichever was saved over which. */
export async function twoSavers(folder: string, linesEach: number): Promise<TwoSavers> {
  mkdirSync(folder, { recursive: true });
  const place = torturedPlace(folder);
  writeFileSync(place.path, torturedText(torturedVocabulary(), 0, [], 0));
  const names = ["left", "right"];
  const conflicts = await Promise.all(names.map((name) => saveAs(name, folder, linesEach)));
  const standing = readKept(place).text.split("\n");
  const wanted = names.flatMap((name) => Array.from({ length: linesEach }, (_, line) => `${name} ${line}`));
  const times = wanted.map((line) => standing.filter((one) => one === line).length);
  return {
    saves: wanted.length,
    conflictsFound: conflicts.reduce((sum, one) => sum + one, 0),
    linesLost: times.filter((count) => count === 0).length,
    linesTwice: times.filter((count) => count > 1).length,
    revisionsDamaged: damagedRevisions(place).length,
  };
}

function saveAs(name: string, folder: string, count: number): Promise<number> {
  return new Promise((resolve, reject) => {
    const child = startSelf(["--lines", folder, name, String(count)]);
    let said = "";
    child.stdout?.on("data", (words) => {
      said += words;
    });
    child.on("error", reject);
    child.on("close", (code) =>
      code === 0 ? resolve(Number(said)) : reject(new Error(`saver ${name} must end well; got ${code}`)),
    );
  });
}
