import { describe, expect, it } from "vitest";
import { newSheet } from "@/lib/consult/sheet/newSheet";
import { change } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { ask, asked, closing, fresh, id, path, read, repair } from "./sheetAsked";

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
