import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readCase } from "@/lib/casebook/readCase";
import { stepSchema } from "@/lib/casebook/step";
import { gaugeReadings } from "@/lib/consult/gauge/gaugeReadings";
import { readingsSchema } from "@/lib/consult/gauge/readingsInput";
import { readingsOfPath } from "@/lib/consult/gauge/readingsOfPath";
import { changeSheet } from "@/lib/consult/sheet/changeSheet";
import { newReadings } from "@/lib/consult/sheet/newReadings";
import { newSheet } from "@/lib/consult/sheet/newSheet";
import { readSentSheet } from "@/lib/consult/sheet/sentSheet";
import { stepsOfReadings } from "@/lib/consult/sheet/stepsOfReadings";
import { buildReader } from "@/lib/reading/reader";
import { checkSchema } from "@/lib/vocabulary/check";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";

const piston = smallVocabulary.parts.get("piston");
const legsCheck = checkSchema.parse({
  id: "legs-parallel",
  label: "Legs side by side",
  question: "Do the legs run side by side?",
  families: ["brass"],
  parts: ["bell-stem"],
  risk: 1,
  minutes: 2,
  how: "A few plain words that are long enough to stand here.",
  reads: "splay",
  normal: "parallel",
  outcomes: [
    { id: "parallel", label: "Side by side" },
    { id: "spread", label: "Spread", measured: { overThou: 3 } },
    { id: "pinched", label: "Pinched", measured: { underThou: -3 } },
  ],
});
const vocabulary = {
  ...smallVocabulary,
  checks: new Map([...smallVocabulary.checks, [legsCheck.id, legsCheck]]),
  parts: new Map([
    ...smallVocabulary.parts,
    ...(piston ? [["piston", { ...piston, swapsInto: "casing" }] as const] : []),
  ]),
};
const reader = buildReader(vocabulary);
const { id, text: fresh } = newSheet(
  { instrument: "cornet", complaint: "Third valve hangs.", clock: { minutes: 7 } },
  vocabulary,
  [],
  "2026-11-25",
);
const plugs = {
  part: "3rd casing",
  depth: "1.2 in",
  passes: [".665 in"],
  stops: [".667 in"],
  reference: { part: "casing 1", passes: [".668 in"], stops: [] },
  piston: { diameter: ".6648 in", plusMinus: ".1 thou" },
};
const bore = { part: "casing 3", readings: [0, 60, 120].map((angle) => ({ angle, diameter: "16.9 mm" })) };
const swap = { a: "piston 3", b: "casing 1", result: "free" };

function ask(base: string, readings: unknown, entries: Readonly<Record<string, string>> = {}) {
  const sent = readSentSheet(
    Object.entries({ sheet: id, base, wish: "readings", readings: JSON.stringify(readings), ...entries }),
  );
  return changeSheet(sent, { reader, nowMs: 0, caseOf: () => undefined });
}
function pathOf(base: string, readings: unknown, entries: Readonly<Record<string, string>> = {}) {
  const changed = ask(base, readings, entries);
  if (changed.text === undefined) throw new Error(JSON.stringify(changed.problems));
  const read = readCase(changed.text, "a.md", vocabulary);
  expect(read.problems).toEqual([]);
  return { text: changed.text, path: read.case?.path ?? [], clock: read.case?.clock };
}

describe("readings that are logged", () => {
  it("become a step each, under the parts' own names, with the clock's minutes at the last", () => {
    const { path, clock } = pathOf(fresh, { gauges: [plugs], diameters: [bore], swaps: [swap] });
    expect(path).toEqual([
      {
        plugs: { part: "casing 3", depth: "1.2 in", passes: [".665 in"], stops: [".667 in"] },
        reference: { part: "casing 1", passes: [".668 in"], stops: [] },
        piston: { part: "piston 3", diameter: ".6648 in", plusMinus: ".1 thou" },
        minutes: 0,
      },
      { bore, minutes: 0 },
      { swap: ["piston 3", "casing 1"], found: "free", minutes: 7 },
    ]);
    expect(clock?.minutes).toBe(0);
  });

  it("are not logged again: what is new alone joins the path, with the minutes and the note that were written", () => {
    const { text } = pathOf(fresh, { gauges: [plugs] });
    expect(ask(text, { gauges: [plugs] }).problems[0]?.received).toBe("only what the path has already");
    const { path } = pathOf(
      text,
      { gauges: [plugs], swaps: [swap] },
      { "step.0.minutes": "3", "step.0.note": "both oiled" },
    );
    expect(path).toHaveLength(2);
    expect(path[1]).toMatchObject({ swap: ["piston 3", "casing 1"], minutes: 3, note: "both oiled" });
  });

  it.each([
    [{ gauges: [{ part: "casing 3", passes: ["16.88"] }] }, "'16.88'"],
    [{ gauges: [{ part: "casing 3", passes: ["16.88 in"] }] }, "'16.88 in'"],
    [{ diameters: [{ part: "the wotsit", readings: bore.readings }] }, "'the wotsit'"],
    [{ gauges: [{ ...plugs, part: "bell stem" }] }, "'what goes into it'"],
    [{}, "none"],
    ["nothing", "none"],
  ])("%j is refused, and it is said which part of it", (readings, received) => {
    expect(ask(fresh, readings).problems[0]?.received).toBe(received);
  });

  it.each([
    ["80.5 mm", "spread", "The legs spread by 19.7 thou (0.500 mm)"],
    ["79.5 mm", "pinched", "The legs are pinched by 19.7 thou (0.500 mm)"],
  ])("of legs %s across at the tips come to '%s', with the figures in the note", (tips, found, words) => {
    const readings = [
      { at: "0 mm", across: "80 mm" },
      { at: "600 mm", across: tips },
    ];
    const { text, path } = pathOf(
      fresh,
      { legs: [{ part: "bell stem", readings }] },
      { "step.0.note": "outers" },
    );
    expect(path[0]).toMatchObject({ check: "legs-parallel", part: "bell-stem", found, minutes: 7 });
    expect(path[0]?.note).toContain(words);
    expect(path[0]?.note).toMatch(/outers$/);
    expect(ask(text, { legs: [{ part: "bell stem", readings }] }).problems[0]?.received).toBe(
      "only what the path has already",
    );
  });

  it("of a leak are a step as they were written, known again, and come back to the gauges", () => {
    const leak = { volume: "450 ml", first: "30 mbar", second: "18 mbar", after: "10 s", sound: "8 ml/min" };
    const { text, path } = pathOf(fresh, { leaks: [leak] });
    expect(path).toEqual([{ leak, minutes: 7 }]);
    expect(readingsOfPath({ path }).leaks).toEqual([leak]);
    expect(ask(text, { leaks: [leak] }).problems[0]?.received).toBe("only what the path has already");
    expect(pathOf(text, { leaks: [{ flow: "40 ml/min", at: "30 mbar" }] }).path).toHaveLength(2);
  });

  it.each([
    [{ volume: "450 ml", first: "30 mbar" }, "volume, both pressures and the time"],
    [{ flow: "40", at: "30 mbar" }, "a number with its unit"],
    [{ volume: "450 ml", first: "18 mbar", second: "30 mbar", after: "10 s" }, "a pressure that falls"],
  ])("of a leak such as %j are refused in words", (leak, words) => {
    const { text, problems } = ask(fresh, { leaks: [leak] });
    expect(text).toBeUndefined();
    expect(problems[0]?.expected).toContain(words);
  });

  it("of legs that decide nothing are not logged: a twist does not show in them", () => {
    const readings = [
      { at: "0 mm", across: "80 mm" },
      { at: "600 mm", across: "80.01 mm" },
    ];
    expect(ask(fresh, { legs: [{ part: "bell stem", readings }] }).problems).toHaveLength(1);
    expect(
      gaugeReadings(readingsSchema.parse({ legs: [{ part: "bell stem", readings }] }), reader),
    ).toMatchObject({
      findings: [],
      legs: [{ part: "bell-stem", splayThou: { low: 0.39, high: 0.39 }, flags: [] }],
    });
  });

  it("that are no JSON are refused in words", () => {
    const sent = readSentSheet([
      ["sheet", id],
      ["base", fresh],
      ["wish", "readings"],
      ["readings", "{"],
    ]);
    const changed = changeSheet(sent, { reader, nowMs: 0, caseOf: () => undefined });
    expect(changed.problems[0]?.expected).toBe("plugs, diameters or swaps first");
  });
});

describe("readings taken from a path", () => {
  const length = fc.integer({ min: 1600, max: 1800 }).map((hundredths) => `${hundredths / 100} mm`);
  const place = fc.integer({ min: 1, max: 3 });
  const readings = fc.record({
    gauges: fc.array(
      fc.record(
        {
          part: place.map((at) => `casing ${at}`),
          depth: length,
          passes: fc.array(length, { maxLength: 3 }),
          stops: fc.array(length, { maxLength: 3 }),
          piston: fc.record({ part: place.map((at) => `piston ${at}`), diameter: length }),
        },
        { requiredKeys: ["part", "passes", "stops"] },
      ),
      { maxLength: 3 },
    ),
    diameters: fc.array(
      fc.record({
        part: place.map((at) => `casing ${at}`),
        readings: fc.array(fc.record({ angle: fc.integer({ min: 0, max: 359 }), diameter: length }), {
          minLength: 1,
          maxLength: 6,
        }),
      }),
      { maxLength: 3 },
    ),
    swaps: fc.uniqueArray(
      fc.record({
        a: place.map((at) => `piston ${at}`),
        b: place.map((at) => `casing ${at}`),
        result: fc.constantFrom("free", "drags", "sticks"),
      }),
      { selector: ({ a, b }) => `${a} ${b}`, maxLength: 4 },
    ),
    leaks: fc.array(
      fc.oneof(
        fc.record({
          volume: fc.constantFrom("450 ml", "1.2 l"),
          first: fc.constantFrom("30 mbar", "3 kPa"),
          second: fc.constantFrom("18 mbar", "29 mbar"),
          after: fc.constantFrom("10 s", "1 min"),
        }),
        fc.record({ flow: fc.constantFrom("40 ml/min", "0 ml/min"), at: fc.constant("30 mbar") }),
      ),
      { maxLength: 2 },
    ),
  });

  it("are those that were logged, and nothing in them is new to it", () => {
    fc.assert(
      fc.property(readings, (said) => {
        const told = stepsOfReadings({ ...said, legs: [] }, reader, "cornet");
        if ("fault" in told) throw new Error(told.fault.received);
        const path = told.steps.map((step) => stepSchema.parse(step));
        expect(readingsOfPath({ path })).toEqual({ ...said, legs: [] });
        expect(newReadings(told.steps, path)).toEqual([]);
        expect(newReadings(told.steps, [])).toHaveLength(told.steps.length);
      }),
    );
  });

  it("of a pair that was swapped twice hold the last", () => {
    const path = ["free", "drags"].map((found) =>
      stepSchema.parse({ swap: ["piston 1", "casing 2"], found }),
    );
    expect(readingsOfPath({ path }).swaps).toEqual([{ a: "piston 1", b: "casing 2", result: "drags" }]);
  });
});
