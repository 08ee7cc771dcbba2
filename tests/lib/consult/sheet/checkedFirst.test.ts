import { expect, it } from "vitest";
import { checkedFirst } from "@/lib/consult/sheet/checkedFirst";
import { makeCase } from "@/tests/fixtures/makeCase";

it("a check went before a repair when it was ticked, or stands in the path before it; proof afterwards does not count", () => {
  const { path } = makeCase({
    id: "a",
    path: [
      { check: "look-casing", found: "sound" },
      { repair: "round-casing", result: "better" },
      { check: "bore-gauge", found: "round" },
      { repair: "round-casing", result: "fixed" },
    ],
  });
  expect([...checkedFirst({ path }, { repair: "round-casing", ticked: ["look-solder"] })]).toEqual([
    "look-solder",
    "look-casing",
  ]);
  expect([...checkedFirst({ path }, { repair: "clean-and-oil" })]).toEqual(["look-casing", "bore-gauge"]);
});
