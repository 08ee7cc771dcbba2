import { readCase } from "@/lib/casebook/readCase";
import { changeSheet } from "@/lib/consult/sheet/changeSheet";
import { newSheet } from "@/lib/consult/sheet/newSheet";
import { readSentSheet } from "@/lib/consult/sheet/sentSheet";
import { buildReader } from "@/lib/reading/reader";
import { makeCase } from "@/tests/fixtures/makeCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

/** A finished job on another valve, whose second repair helped. */
const past = makeCase({
  id: "24-009",
  instrument: "cornet",
  path: [
    { repair: "clean-and-oil", part: "valve 1", result: "no-change" },
    { repair: "ease-casing", part: "casing 1", result: "fixed" },
  ],
  causes: [{ cause: "casing-dented", role: "root" }],
});
const reader = buildReader(smallVocabulary);
export const ground = {
  reader,
  nowMs: Date.parse("2026-11-25T10:30:00Z"),
  caseOf: (one: string) => (one === past.id ? past : undefined),
};
export const path = [{ check: "valve-travel", part: "valve 3", found: "hangs" }];
export const { id, text: fresh } = newSheet(
  { instrument: "cornet", complaint: "Third valve hangs.", path, benchLamp: { bulbs: 2 } },
  smallVocabulary,
  ["26-007"],
  "2026-11-25",
);

/** What becomes of a sheet when this is sent, at half past ten. */
export function ask(base: string, entries: Readonly<Record<string, string>>, proofs: readonly string[] = []) {
  const list = [
    ...Object.entries({ sheet: id, base, ...entries }),
    ...proofs.map((key) => ["proof", key] as const),
  ];
  return changeSheet(readSentSheet(list), ground);
}
/** The sheet as it is then; throws where what was sent is at fault. */
export function asked(
  base: string,
  entries: Readonly<Record<string, string>>,
  proofs: readonly string[] = [],
): string {
  const changed = ask(base, entries, proofs);
  if (changed.text === undefined) throw new Error(JSON.stringify(changed.problems));
  return changed.text;
}
export const read = (text: string) => readCase(text, "a.md", smallVocabulary);
export const repair = {
  wish: "log",
  "step.0.what": "repair ease-casing",
  "step.0.part": "casing 3",
  "step.0.minutes": "30",
};
export const closing = {
  wish: "close",
  outcome: "fixed",
  minutes: "32",
  closed: "2026-11-26",
  "cause.0.cause": "casing-dented",
  "cause.0.role": "root",
  "cause.1.part": "valve 3",
};
