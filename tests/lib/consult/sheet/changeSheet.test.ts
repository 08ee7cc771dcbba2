import { describe, expect, it } from "vitest";
import { readCase } from "@/lib/casebook/readCase";
import { changeSheet } from "@/lib/consult/sheet/changeSheet";
import { listProofs } from "@/lib/consult/sheet/listProofs";
import { newSheet } from "@/lib/consult/sheet/newSheet";
import { readSentSheet } from "@/lib/consult/sheet/sentSheet";
import { buildReader } from "@/lib/reading/reader";
import { change } from "@/tests/fixtures/goodCase";
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
const ground = {
  reader,
  nowMs: Date.parse("2026-11-25T10:30:00Z"),
  caseOf: (one: string) => (one === past.id ? past : undefined),
};
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
  return changeSheet(readSentSheet(list), ground);
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
    const harmed = asked(fresh, { ...harm, harmWhat: "It cracked.", harmHow: "The mandrel jumped." });
    expect(read(harmed).case?.harms).toEqual([
      {
        repair: "ease-casing",
        part: "casing 3",
        what: "It cracked.",
        how: "The mandrel jumped.",
        step: 2,
        minutes: 20,
        paidBy: "customer",
      },
    ]);
    expect(read(asked(harmed, { wish: "undo" })).case).toMatchObject({
      harms: [],
      path: [{ found: "hangs" }],
    });
  });

  it("that an earlier repair harmed is told of that one, and no step is logged for it", () => {
    const two = asked(asked(fresh, { ...repair, "step.0.found": "fixed" }), {
      wish: "log",
      "step.0.what": "repair clean-and-oil",
      "step.0.found": "no-change",
    });
    const harm = {
      wish: "log",
      "step.0.what": "repair clean-and-oil",
      "step.0.found": "harm",
      harmWhat: "It cracked.",
    };
    const told = read(asked(two, { ...harm, harmStep: "2" })).case;
    expect(told?.path).toHaveLength(3);
    expect(told?.harms).toMatchObject([
      { repair: "ease-casing", part: "casing 3", step: 2, what: "It cracked." },
    ]);
    for (const harmStep of ["1", "4", "x", "-1"])
      expect(ask(two, { ...harm, harmStep }).problems[0]).toMatchObject({
        field: "harm",
        expected: "the number of a repair in the path",
      });
    const last = asked(two, { ...harm, harmStep: "3" });
    const back = read(asked(last, { wish: "undo" }));
    expect(back.problems).toEqual([]);
    expect(back.case).toMatchObject({ harms: [], path: [{}, { repair: "ease-casing" }] });
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

describe("a plan", () => {
  const planned = asked(fresh, { wish: "plan", repair: "ease-casing casing-dented" });

  it("takes a repair on the part that is in trouble, with the cause that it is for, and lets it go again", () => {
    expect(read(planned).case?.plan).toEqual([
      { repair: "ease-casing", part: "valve 3", for: "casing-dented" },
    ]);
    expect(asked(planned, { wish: "unplan", at: "0" })).toBe(fresh);
    expect(ask(fresh, { wish: "plan", repair: "" }).problems[0]?.field).toBe("plan");
  });

  it("keeps which checks were seen beside a repair and which were ticked, also that none was", () => {
    const list = (ticked: readonly string[]) => [
      ["wish", "look"],
      ["sheet", id],
      ["base", planned],
      ["at", "0"],
      ["seen", "valve-travel"],
      ["seen", "which-way"],
      ...ticked.map((one) => ["ticked", one]),
    ];
    const looked = (ticked: readonly string[]) => {
      const entries = list(ticked).map(([name = "", value = ""]): [string, string] => [name, value]);
      return read(changeSheet(readSentSheet(entries), ground).text ?? "").case?.plan?.[0];
    };
    expect(looked(["which-way"])).toMatchObject({
      seen: ["valve-travel", "which-way"],
      ticked: ["which-way"],
    });
    expect(looked([])).toMatchObject({ seen: ["valve-travel", "which-way"], ticked: [] });
  });

  it("is taken over from a past case: what helped there, on this job's part, once", () => {
    const taken = asked(fresh, { wish: "take-over", from: "24-009" });
    expect(read(taken).case?.plan).toEqual([
      { repair: "ease-casing", part: "valve 3", for: "casing-dented", from: "24-009" },
    ]);
    expect(ask(taken, { wish: "take-over", from: "24-009" }).problems).toHaveLength(1);
    expect(ask(fresh, { wish: "take-over", from: "99-999" }).problems[0]?.received).toBe("no case '99-999'");
  });

  it("asks for its proofs beforehand, but lets a job be closed without what was not done", () => {
    const job = read(planned).case;
    expect(job && listProofs(job, smallVocabulary)).toMatchObject([{ standing: "planned" }]);
    const other = { wish: "log", "step.0.what": "repair clean-and-oil", "step.0.found": "fixed" };
    const closed = asked(asked(planned, other), closing, ["valve-travel free"]);
    expect(read(closed).case).toMatchObject({ status: "closed" });
  });
});

describe("a clock", () => {
  const at = (base: string, minutes: number, entries: Readonly<Record<string, string>>) => {
    const list = Object.entries({ sheet: id, base, ...entries });
    const nowMs = Date.parse("2026-11-25T10:30:00Z") + minutes * 60_000;
    const changed = changeSheet(readSentSheet(list), { ...ground, nowMs });
    if (changed.text === undefined) throw new Error(JSON.stringify(changed.problems));
    return changed.text;
  };
  const running = at(fresh, 0, { wish: "clock", clock: "start" });
  const step = {
    wish: "log",
    "step.0.what": "check which-way",
    "step.0.part": "valve 3",
    "step.0.found": "up",
  };

  it("runs on in the file, gives its minutes to the next step and begins anew", () => {
    expect(read(running).case?.clock).toEqual({ minutes: 0, since: "2026-11-25T10:30:00Z" });
    const logged = at(running, 7.4, step);
    expect(read(logged).case).toMatchObject({
      path: [{}, { check: "which-way", minutes: 7 }],
      clock: { minutes: 0, since: "2026-11-25T10:37:24Z" },
    });
    expect(read(at(logged, 10, { wish: "undo" })).case?.clock?.minutes).toBe(7);
  });

  it("gives way to minutes that were written", () => {
    expect(read(at(running, 7, { ...step, "step.0.minutes": "3" })).case?.path[1]?.minutes).toBe(3);
  });

  it("is stopped, put right, set going again and taken away", () => {
    const stopped = at(running, 12, { wish: "clock", clock: "stop" });
    expect(read(stopped).case?.clock).toEqual({ minutes: 12 });
    expect(read(at(stopped, 99, step)).case?.path[1]?.minutes).toBe(12);
    const right = at(stopped, 20, { wish: "clock", clock: "set", clockMinutes: "5" });
    const again = at(right, 30, { wish: "clock", clock: "start" });
    expect(read(at(again, 33, step)).case?.path[1]?.minutes).toBe(8);
    expect(at(right, 40, { wish: "clock", clock: "off" })).toBe(fresh);
    const list = Object.entries({
      sheet: id,
      base: fresh,
      wish: "clock",
      clock: "set",
      clockMinutes: "soon",
    });
    expect(changeSheet(readSentSheet(list), ground).problems[0]?.received).toBe("'soon'");
  });

  it("that was left running over weeks still makes a step that can be saved", () => {
    expect(read(at(running, 50_000, step)).problems).toEqual([]);
  });

  it("is gone when the job is closed", () => {
    const closed = at(running, 5, { ...closing, outcome: "not-fixed" });
    expect(read(closed).case?.status).toBe("closed");
    expect(closed).not.toContain("clock:");
  });
});

describe("minutes of the path", () => {
  it("are put right step by step; the rest of a step stays", () => {
    const logged = asked(fresh, { ...repair, "step.0.found": "better", "step.0.note": "slowly" });
    const entries = {
      wish: "minutes",
      "step.0.from": "0",
      "step.0.minutes": "4",
      "step.1.from": "1",
      "step.1.minutes": "",
    };
    const mended = read(asked(logged, entries)).case;
    expect(mended?.path).toMatchObject([
      { minutes: 4 },
      { repair: "ease-casing", minutes: 0, note: "slowly" },
    ]);
  });
});

describe("a quote", () => {
  const quote = { wish: "quote", quotedMinutes: "60", quotedPrice: "72.5", p50: "35", p80: "58", p95: "" };

  it("is kept with its day and what like cases then said, and takes the place of an earlier one", () => {
    const quoted = asked(fresh, quote);
    expect(read(quoted).case?.quoted).toEqual({
      minutes: 60,
      price: 72.5,
      on: "2026-11-25",
      p50: 35,
      p80: 58,
    });
    const again = asked(quoted, { ...quote, quotedMinutes: "80", p50: "", p80: "" });
    expect(read(again).case?.quoted).toEqual({ minutes: 80, price: 72.5, on: "2026-11-25" });
  });

  it("needs both minutes and price", () => {
    expect(ask(fresh, { ...quote, quotedPrice: " " }).problems[0]?.field).toBe("quote");
  });
});

describe("like cases at closing", () => {
  it("keep what was different and whether the lesson held, where something was said", () => {
    const entries = {
      ...closing,
      outcome: "not-fixed",
      "like.0.case": "24-009",
      "like.0.different": "This one was dropped.",
      "like.0.lesson": "failed",
      "like.1.case": "24-010",
      "like.1.different": "",
      "like.1.lesson": "",
    };
    expect(read(asked(fresh, entries)).case?.like).toEqual([
      { case: "24-009", different: "This one was dropped.", lesson: "failed" },
    ]);
  });
});
