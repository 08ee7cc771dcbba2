import { describe, expect, it } from "vitest";
import { readCase } from "@/lib/casebook/readCase";
import { changeSheet } from "@/lib/consult/sheet/changeSheet";
import { newSheet } from "@/lib/consult/sheet/newSheet";
import { readSentSheet } from "@/lib/consult/sheet/sentSheet";
import { buildReader } from "@/lib/reading/reader";
import { change } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const reader = buildReader(smallVocabulary);
const path = [{ check: "valve-travel", part: "valve 3", found: "hangs" }];
const { id, text: fresh } = newSheet(
  { instrument: "cornet", complaint: "Third valve hangs.", path, benchLamp: { bulbs: 2 } },
  smallVocabulary,
  ["26-007"],
  "2026-11-25",
);

function ask(base: string, entries: Readonly<Record<string, string>>, proofs: readonly string[] = []) {
  const list = [
    ...Object.entries({ sheet: id, base, ...entries }),
    ...proofs.map((key) => ["proof", key] as const),
  ];
  return changeSheet(readSentSheet(list), reader);
}
function asked(
  base: string,
  entries: Readonly<Record<string, string>>,
  proofs: readonly string[] = [],
): string {
  const changed = ask(base, entries, proofs);
  if (changed.text === undefined) throw new Error(JSON.stringify(changed.problems));
  return changed.text;
}
const read = (text: string) => readCase(text, "a.md", smallVocabulary);
const repair = {
  wish: "log",
  "step.0.what": "repair ease-casing",
  "step.0.part": "casing 3",
  "step.0.minutes": "30",
};
const closing = {
  wish: "close",
  outcome: "fixed",
  minutes: "32",
  closed: "2026-11-26",
  "cause.0.cause": "casing-dented",
  "cause.0.role": "root",
  "cause.1.part": "valve 3",
};

describe("a sheet that is begun", () => {
  it("is an open case under the next id, with what the bench says and what nobody here knows", () => {
    expect(id).toBe("26-008");
    expect(read(fresh).case).toMatchObject({
      status: "open",
      title: "Cornet: Third valve hangs.",
      benchLamp: { bulbs: 2 },
    });
  });

  it("holds though the bench says neither instrument nor complaint", () => {
    expect(read(newSheet({ path }, smallVocabulary, [], "2026-11-25").text).problems).toEqual([]);
  });
});

describe("a step", () => {
  it("is put at the end of the path in the case file's own words, and taken back without a trace", () => {
    const entries = {
      wish: "log",
      "step.0.what": "check valve-travel",
      "step.0.part": "Valve 2",
      "step.0.found": "free",
      "step.0.minutes": "2",
    };
    const logged = asked(fresh, entries);
    expect(read(logged).case?.path[1]).toMatchObject({ part: "valve 2", found: "free", minutes: 2 });
    expect(asked(logged, { wish: "undo" })).toBe(fresh);
  });

  it("without anything tapped is not logged", () => {
    expect(
      ask(fresh, { wish: "log", "step.0.what": "check valve-travel", "step.0.found": "" }).problems,
    ).toHaveLength(1);
  });

  it("that did harm says what and who pays, and takes both away when it is taken back", () => {
    const harm = { ...repair, "step.0.found": "harm", harmMinutes: "20", harmPaidBy: "customer" };
    expect(ask(fresh, harm).problems[0]?.field).toBe("harm");
    const harmed = asked(fresh, { ...harm, harmWhat: "It cracked." });
    expect(read(harmed).case?.harms).toEqual([
      { repair: "ease-casing", part: "casing 3", what: "It cracked.", minutes: 20, paidBy: "customer" },
    ]);
    expect(read(asked(harmed, { wish: "undo" })).case).toMatchObject({
      harms: [],
      path: [{ found: "hangs" }],
    });
  });

  it("with minutes that are no number is left for the save to find fault with, as typed", () => {
    const text = asked(fresh, { ...repair, "step.0.found": "fixed", "step.0.minutes": "a while" });
    expect(read(text).problems[0]).toMatchObject({ field: "path.1.minutes", received: "'a while'" });
  });
});

describe("a job that is closed as fixed", () => {
  const repaired = asked(fresh, { ...repair, "step.0.found": "fixed" });
  const proof = "valve-travel free valve 3";

  it("needs each repair's proof, ticked or in the path, or why there is none", () => {
    expect(ask(repaired, closing).problems[0]).toMatchObject({
      field: "proof",
      received: "no proof yet of: Valve travel",
    });
    const ticked = read(asked(repaired, closing, [proof])).case;
    expect(ticked).toMatchObject({ status: "closed", outcome: "fixed", minutes: 32 });
    expect(ticked?.path.at(-1)).toMatchObject({ check: "valve-travel", part: "valve 3", found: "free" });
    const unproven = "The player took it away.";
    expect(read(asked(repaired, { ...closing, unproven })).case?.unproven).toBe(unproven);
  });

  it("needs a repair that mended it, or why there is none", () => {
    expect(ask(fresh, closing).problems[0]?.field).toBe("proof");
  });

  it("takes rows of causes without a cause for empty, and a tick at what was never asked for nothing", () => {
    const closed = read(asked(repaired, closing, [proof, "valve-travel hangs valve 1"])).case;
    expect(closed?.causes).toEqual([{ cause: "casing-dented", role: "root" }]);
    expect(closed?.path).toHaveLength(3);
  });

  it("may be closed as not fixed without any proof", () => {
    expect(read(asked(repaired, { ...closing, outcome: "not-fixed" })).problems).toEqual([]);
  });
});

it("a form that shows but some fields leaves the others as they are, unknown ones too", () => {
  const base = change(fresh, "status: open", "status: open\nmaker: Quillfeather");
  const edited = read(asked(base, { wish: "edit", title: "Another title" })).case;
  expect(edited).toMatchObject({ title: "Another title", maker: "Quillfeather", benchLamp: { bulbs: 2 } });
});
