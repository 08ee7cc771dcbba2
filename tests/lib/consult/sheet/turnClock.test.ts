import { describe, expect, it } from "vitest";
import { changeSheet } from "@/lib/consult/sheet/changeSheet";
import { readSentSheet } from "@/lib/consult/sheet/sentSheet";
import { asked, closing, fresh, ground, id, read, repair } from "./sheetAsked";

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
