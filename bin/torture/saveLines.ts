import { randomUUID } from "node:crypto";
import { readKept } from "@/lib/casebook/keeping/readKept";
import { reviseCase } from "@/lib/casebook/keeping/reviseCase";
import { readFrontMatter } from "@/lib/document/readFrontMatter";
import { torturedPlace, torturedText, torturedVocabulary } from "./tortured";

/**
 * Adds lines of one's own to a case that another program adds to at the same time: reads it, writes it with a line more, and
 * where it has changed meanwhile begins that line again. Says on standard output how often it did.
 */
export function saveLines(folder: string, name: string, count: number): void {
  const vocabulary = torturedVocabulary();
  const place = torturedPlace(folder);
  let conflicts = 0;
  for (let line = 0; line < count; ) {
    const before = readKept(place);
    const { body } = readFrontMatter(before.text, place.file);
    const text = torturedText(vocabulary, 0, [...body.split("\n").filter(Boolean), `${name} ${line}`], 0);
    const revised = reviseCase({ text, baseHash: before.hash }, place, {
      vocabulary,
      nowMs: Date.now(),
      mark: randomUUID(),
    });
    if (revised.kind === "refused") throw new Error(JSON.stringify(revised.problems));
    if (revised.kind === "conflict") conflicts += 1;
    else line += 1;
  }
  process.stdout.write(`${conflicts}\n`);
}
