import fc from "fast-check";
import { describe, expect, it } from "vitest";
import {
  blankCause,
  blankStep,
  type CaseForm,
  fieldsOfForm,
  formOfFields,
  sumStepMinutes,
} from "@/lib/casebook/form/caseForm";

const swap = { swap: ["piston 1", "casing 2"], found: "free", minutes: 3 };
const plugs = {
  plugs: { part: "casing 1", passes: [".6700 in"], stops: [".6710 in"] },
  minutes: 9,
  note: "cold\nand again warm",
};
const full = {
  id: "26-001",
  title: "Second valve hangs",
  status: "closed",
  demo: true,
  instrument: "trumpet",
  received: "2026-02-03",
  complaint: "Hangs on the way up.",
  arrival: ["dent in the bell, old", "lacquer worn"],
  path: [
    { check: "valve-travel", part: "valve 2", found: "hangs", way: "up", minutes: 2 },
    swap,
    { repair: "clean-and-oil", result: "no-change", minutes: 12, lamp: "left one" },
    plugs,
  ],
  causes: [{ cause: "casing-dented", part: "casing 2", role: "root", note: "by the case's latch" }],
  quoted: { minutes: 30, price: 36, currency: "own" },
  benchLamp: { left: true },
};
const changed = (form: CaseForm, change: Partial<CaseForm>): CaseForm => ({ ...form, ...change });

describe("a case as a form", () => {
  it("shows each field as text, a list as a line an entry, and a step as a row", () => {
    const form = formOfFields(full, "Story.");
    expect(form.title).toBe("Second valve hangs");
    expect(form.arrival).toBe("dent in the bell, old\nlacquer worn");
    expect(form.quotedMinutes).toBe("30");
    expect(form.steps[0]).toEqual({
      from: "0",
      what: "check valve-travel",
      part: "valve 2",
      found: "hangs",
      where: "",
      minutes: "2",
      note: "",
      words: "",
    });
    expect(form.steps[2]).toMatchObject({ what: "repair clean-and-oil", found: "no-change", minutes: "12" });
  });

  it("shows a step that it has no fields for as kept, in words", () => {
    expect(formOfFields(full, "").steps[1]).toMatchObject({
      what: "kept",
      words: "swap piston 1, casing 2, found free",
      minutes: "3",
    });
  });

  it("gives back what it was made from when nothing was changed", () => {
    expect(fieldsOfForm(formOfFields(full, ""), full)).toEqual(full);
  });

  it("gives back any front matter unchanged, sound or not", () => {
    const names = [
      "id",
      "title",
      "path",
      "causes",
      "quoted",
      "minutes",
      "arrival",
      "lessons",
      "complaint",
      "note",
    ];
    const step = fc.dictionary(
      fc.constantFrom("check", "repair", "swap", "found", "part", "minutes", "note", "way"),
      fc.jsonValue({ maxDepth: 2 }),
    );
    const value = fc.oneof(
      fc.jsonValue({ maxDepth: 3 }),
      fc.array(step),
      fc.string({ unit: fc.constantFrom("a", "\n", "\r", " ", "1") }),
    );
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom(...names), value), (fields) => {
        expect(fieldsOfForm(formOfFields(fields, ""), fields)).toEqual(fields);
      }),
    );
  });

  it("keeps swaps, gauge readings, unknown fields and the demo mark when another field is changed", () => {
    const form = changed(formOfFields(full, ""), { title: "Second valve hangs on the way up" });
    expect(fieldsOfForm(form, full)).toEqual({ ...full, title: "Second valve hangs on the way up" });
  });

  it("keeps what a row cannot show when the row is changed", () => {
    const form = formOfFields(full, "");
    const steps = form.steps.map((row, at) => (at === 0 ? { ...row, minutes: "4", note: "twice" } : row));
    expect(fieldsOfForm(changed(form, { steps }), full).path).toEqual([
      { check: "valve-travel", part: "valve 2", found: "hangs", way: "up", minutes: 4, note: "twice" },
      ...full.path.slice(1),
    ]);
  });

  it("keeps the order of the rows and passes over rows left empty", () => {
    const form = formOfFields(full, "");
    const added = { ...blankStep, what: "check play-test", found: "good", minutes: "5" };
    const [first = blankStep, second = blankStep, ...rest] = form.steps;
    const steps = [second, blankStep, first, ...rest, added, blankStep];
    expect(fieldsOfForm(changed(form, { steps }), full).path).toEqual([
      full.path[1],
      full.path[0],
      full.path[2],
      full.path[3],
      { check: "play-test", found: "good", minutes: 5 },
    ]);
  });

  it("takes nothing over from a check when its row becomes a repair", () => {
    const form = formOfFields(full, "");
    const steps = form.steps.map((row, at) =>
      at === 0 ? { ...row, what: "repair clean-and-oil", found: "fixed" } : row,
    );
    expect(fieldsOfForm(changed(form, { steps }), full).path).toMatchObject([
      { repair: "clean-and-oil", part: "valve 2", result: "fixed", minutes: 2 },
      {},
      {},
      {},
    ]);
  });

  it("drops a field whose text is taken out", () => {
    const form = changed(formOfFields(full, ""), { complaint: " ", arrival: "", quotedMinutes: "" });
    const fields = fieldsOfForm(form, full);
    expect(fields).not.toHaveProperty("complaint");
    expect(fields).not.toHaveProperty("arrival");
    expect(fields.quoted).toEqual({ price: 36, currency: "own" });
  });

  it("keeps a number that cannot be read as it was typed, so that it can be found fault with", () => {
    const form = changed(formOfFields({}, ""), { minutes: "an hour" });
    expect(fieldsOfForm(form, {})).toEqual({ minutes: "an hour" });
  });

  it("lets a row that names nothing be found fault with", () => {
    const form = changed(formOfFields({}, ""), { steps: [{ ...blankStep, found: "hangs" }] });
    expect(fieldsOfForm(form, {}).path).toEqual([{ check: "", found: "hangs" }]);
  });

  it("makes a case from nothing with no mark that it is a demo", () => {
    const form = changed(formOfFields({}, ""), {
      id: "26-002",
      causes: [{ ...blankCause, cause: "grit", role: "root" }, blankCause],
    });
    expect(fieldsOfForm(form, {})).toEqual({ id: "26-002", causes: [{ cause: "grit", role: "root" }] });
  });
});

describe("the minutes of the steps", () => {
  it("add up over all rows, kept ones too; what is no number counts for nothing", () => {
    expect(sumStepMinutes(formOfFields(full, ""))).toBe(26);
    const steps = ["1.5", "two", "-3", ""].map((minutes) => ({ ...blankStep, minutes }));
    expect(sumStepMinutes({ steps })).toBe(1.5);
  });
});
