import { describe, expect, it } from "vitest";
import { readSentCase } from "@/lib/casebook/form/sentCase";

describe("a case as a browser sends it", () => {
  it("has its rows in the order of their numbers, however they came", () => {
    const { form } = readSentCase([
      ["step.10.what", "check b"],
      ["step.2.what", "check a"],
      ["cause.0.role", "root"],
    ]);
    expect(form.steps.map(({ what }) => what)).toEqual(["check a", "check b"]);
    expect(form.causes).toEqual([{ from: "", cause: "", part: "", role: "root" }]);
  });

  it("has plain line ends, whatever the browser made of them", () => {
    expect(readSentCase([["story", "one\r\ntwo"]]).form.story).toBe("one\ntwo");
  });

  it("is checked, not saved, when it asks for nothing that is known", () => {
    expect(readSentCase([["wish", "delete-all"]]).wish).toBe("check");
    expect(readSentCase([["wish", "save"]]).wish).toBe("save");
  });

  it("takes files and unknown names for nothing", () => {
    const sent = readSentCase([
      ["title", new Blob(["x"])],
      ["__proto__", "x"],
      ["step.0.__proto__", "x"],
    ]);
    expect(sent.form.title).toBe("");
    expect(sent.form.steps).toEqual([]);
  });
});
