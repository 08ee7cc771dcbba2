import { mkdirSync, renameSync, rmSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { contentHash } from "@/lib/casebook/keeping/contentHash";
import { listRevisions } from "@/lib/casebook/keeping/listRevisions";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { readRevision } from "@/lib/casebook/keeping/readRevision";
import { reviseCase } from "@/lib/casebook/keeping/reviseCase";
import { torturedPlace, torturedText, torturedVocabulary } from "./tortured";

/** What became of cases that another program changed between the opening of a form and its saving. */
export type OutsideEdits = Readonly<{
  edits: number;
  conflictsFound: number;
  outsideEditsLost: number;
  formsLost: number;
  savedOnTopAfterwards: number;
}>;

/** The ways in which editors and synced folders write: over the file, beside it and renamed into place, taken away. */
const ways = [
  (path: string, text: string) => writeFileSync(path, text),
  (path: string, text: string) => {
    writeFileSync(`${path}~`, text);
    renameSync(`${path}~`, path);
  },
  (path: string) => rmSync(path),
];

/** Changes a case from outside in mid-edit, in each way again and again. */
export function editOutside(folder: string, rounds: number): OutsideEdits {
  const vocabulary = torturedVocabulary();
  const count = { edits: 0, conflictsFound: 0, outsideEditsLost: 0, formsLost: 0, savedOnTopAfterwards: 0 };
  for (const [at, way] of ways.entries()) {
    const own = join(folder, String(at));
    mkdirSync(own, { recursive: true });
    const place = torturedPlace(own);
    for (let round = 0; round < rounds; round++) {
      const [opened, outside, form] = [0, 1, 2].map((version) =>
        torturedText(vocabulary, 3 * round + version, [], 5),
      );
      if (opened === undefined || outside === undefined || form === undefined) continue;
      writeFileSync(place.path, opened);
      const { hash } = readKept(place);
      way(place.path, outside);
      const after = readKept(place);
      const keeper = { vocabulary, nowMs: Date.now(), mark: "a" };
      const revised = reviseCase({ text: form, baseHash: hash }, place, keeper);
      count.edits += 1;
      if (revised.kind === "conflict" && revised.theirs === after.text && revised.mine === form)
        count.conflictsFound += 1;
      if (readKept(place).hash !== after.hash) count.outsideEditsLost += 1;
      const kept = listRevisions(place).some(({ number }) => readRevision(place, number) === form);
      if (!kept) count.formsLost += 1;
      const again = reviseCase({ text: form, baseHash: after.hash }, place, keeper);
      if (again.kind === "saved" && again.hash === contentHash(form)) count.savedOnTopAfterwards += 1;
    }
  }
  return count;
}
