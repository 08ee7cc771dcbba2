import { describe, expect, it } from "vitest";
import { blankCause, blankStep } from "@/lib/casebook/form/caseForm";
import { controlOf } from "@/lib/casebook/form/controlOf";

const filled = { ...blankStep, what: "check valve-travel" };
const form = {
  steps: [blankStep, filled, blankStep, filled],
  causes: [blankCause, { ...blankCause, cause: "grit" }],
};

describe("the control that a problem belongs to", () => {
  it("is found past the rows that were left empty", () => {
    expect(controlOf("path.0.found", form)).toBe("step.1.found");
    expect(controlOf("path.1.minutes", form)).toBe("step.3.minutes");
    expect(controlOf("causes.0.part", form)).toBe("cause.1.part");
  });

  it("is the result's for a repair and the first of the row for what names it", () => {
    expect(controlOf("path.1.result", form)).toBe("step.3.found");
    expect(controlOf("path.1.check", form)).toBe("step.3.what");
    expect(controlOf("path.1.repair", form)).toBe("step.3.what");
    expect(controlOf("path.1", form)).toBe("step.3.what");
  });

  it("is the list's first for a problem of the list as a whole", () => {
    expect(controlOf("path", form)).toBe("step.0.what");
    expect(controlOf("causes", form)).toBe("cause.0.cause");
  });

  it("is the field itself for a plain field, and the field of its list for a line", () => {
    expect(controlOf("title", form)).toBe("title");
    expect(controlOf("arrival.2", form)).toBe("arrival");
    expect(controlOf("quoted.minutes", form)).toBe("quotedMinutes");
    expect(controlOf("quoted.price", form)).toBe("quotedPrice");
  });

  it("is none for what the form does not show", () => {
    expect(controlOf("harms.0.what", form)).toBe("");
    expect(controlOf("", form)).toBe("");
    expect(controlOf("path.9.found", form)).toBe("");
  });
});
