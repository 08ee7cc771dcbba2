import { describe, expect, it } from "vitest";
import { blankStep, formOfFields } from "@/lib/casebook/form/caseForm";
import type { SentCase, Wish } from "@/lib/casebook/form/sentCase";
import { advanceDraft, textOfForm } from "@/lib/consult/writeUp/draftCase";
import { openDraft } from "@/lib/consult/writeUp/openDraft";
import { buildReader } from "@/lib/reading/reader";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";

const reader = buildReader(loadVocabulary("content/vocabulary").vocabulary);
const ground = { reader, taken: new Set(["26-001"]) };
const empty = formOfFields({}, "");
const fromForm = (wish: Wish, form: Partial<SentCase["form"]>, base = ""): SentCase => ({
  wish,
  view: "form",
  form: { ...empty, ...form },
  base,
  text: "",
});
const fromText = (wish: Wish, text: string): SentCase => ({ ...fromForm(wish, {}), view: "text", text });

const written = `---
# kept by hand
id: 26-002
title: Second valve hangs
status: open
instrument: trumpet
received: 2026-02-03
complaint: Hangs.
path:
  - { swap: [piston 2, casing 1], found: free, lamp: left }
bench: 3
---

The story.
`;

describe("a draft, a wish further", () => {
  it("says the same case as form and as text", () => {
    const shown = advanceDraft(fromText("show-form", written), ground);
    expect(shown).toMatchObject({ view: "form", base: written, problems: [] });
    expect(shown.form).toMatchObject({ id: "26-002", title: "Second valve hangs", story: "The story." });
    const back = advanceDraft({ ...fromForm("show-text", shown.form, shown.base) }, ground);
    expect(back.view).toBe("text");
    expect(back.text).toBe(written);
  });

  it("keeps swaps and unknown fields in the text when the form changes another field", () => {
    const { form, base } = advanceDraft(fromText("show-form", written), ground);
    const { text } = advanceDraft(fromForm("check", { ...form, title: "It hangs" }, base), ground);
    expect(text).toContain("title: It hangs");
    expect(text).toMatch(/swap: \[ ?piston 2, casing 1 ?\], found: free, lamp: left/);
    expect(text).toContain("bench: 3");
  });

  it("stays with a text that cannot be read, and says why", () => {
    const draft = advanceDraft(fromText("show-form", "---\nid: [\n---\n"), ground);
    expect(draft).toMatchObject({ view: "text", text: "---\nid: [\n---\n", asked: true });
    expect(draft.problems.length).toBeGreaterThan(0);
  });

  it("names each problem with the control that it belongs to", () => {
    const steps = [blankStep, { ...blankStep, what: "check valve-travel", found: "hovers" }];
    const { problems } = advanceDraft(fromForm("check", { status: "open", steps }), ground);
    expect(problems.map(({ control }) => control)).toContain("title");
    const sound = {
      id: "26-003",
      title: "It hangs",
      status: "open",
      instrument: "trumpet",
      complaint: "Hangs.",
    };
    const next = advanceDraft(fromForm("check", { ...sound, received: "2026-02-03", steps }), ground);
    expect(next.problems.map(({ control }) => control)).toEqual(["step.1.found"]);
  });

  it("finds fault with an id that another case has", () => {
    const { problems } = advanceDraft(fromText("check", written.replace("26-002", "26-001")), ground);
    expect(problems).toMatchObject([{ field: "id", control: "id" }]);
  });

  it("reads parts and outcomes as they are said at the bench", () => {
    const steps = [
      { ...blankStep, what: "check valve-travel", part: "2nd valve", found: "Hangs, and comes with help" },
    ];
    const { form } = advanceDraft(fromForm("check", { instrument: "trumpet", steps }), ground);
    expect(form.steps[0]).toMatchObject({ part: "valve 2", found: "hangs" });
  });

  it("keeps words that nobody can read as they were typed", () => {
    const steps = [{ ...blankStep, what: "check valve-travel", part: "the qwertz", found: "xyzzy" }];
    const { form } = advanceDraft(fromForm("check", { steps }), ground);
    expect(form.steps[0]).toMatchObject({ part: "the qwertz", found: "xyzzy" });
  });

  it("takes the sum of the steps for the minutes when asked", () => {
    const steps = ["3", "1.5"].map((minutes) => ({ ...blankStep, minutes }));
    expect(advanceDraft(fromForm("sum", { steps }), ground).form.minutes).toBe("4.5");
  });

  it("adds empty rows when asked and writes nothing of them", () => {
    const draft = advanceDraft(fromForm("more-steps", {}), ground);
    expect(draft.form.steps.length).toBeGreaterThan(4);
    expect(textOfForm(draft.form, "")).toBe(textOfForm(empty, ""));
  });
});

describe("a new draft", () => {
  it("proposes the next id and the day, and takes over what the bench knows, swaps too", () => {
    const fields = { complaint: "Hangs.", path: [{ swap: ["piston 2", "casing 1"], found: "free" }] };
    const { form, base, asked } = openDraft(fields, ["26-001"], "2026-11-25");
    expect(form).toMatchObject({ id: "26-002", status: "closed", closed: "2026-11-25", complaint: "Hangs." });
    expect(form.steps[0]?.what).toBe("kept");
    expect(textOfForm(form, base)).toContain("swap: [ piston 2, casing 1 ]");
    expect(asked).toBe(false);
  });
});
