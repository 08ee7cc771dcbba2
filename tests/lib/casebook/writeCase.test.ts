import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { caseFieldsSchema } from "@/lib/casebook/caseFile";
import { readCase } from "@/lib/casebook/readCase";
import { writeCase } from "@/lib/casebook/writeCase";
import { goodCase } from "@/tests/fixtures/goodCase";
import { smallVocabulary } from "@/tests/fixtures/smallVocabulary";
import { anyFields, anyStory } from "./anyCase";

const read = (text: string) => {
  const { case: kase, problems } = readCase(text, "a.md", smallVocabulary);
  expect(problems).toEqual([]);
  if (!kase) throw new Error("a case without problems must be there; got none; mend readCase");
  return kase;
};
const rewrite = (text: string) => {
  const { story, file: _, ...fields } = read(text);
  return writeCase(fields, story);
};

describe("a case that is written", () => {
  it("stands in the schema's order, a step a line, with the story below", () => {
    const text = writeCase(
      {
        minutes: 12,
        title: "Third valve: hangs",
        benchLamp: { left: true },
        id: "24-001",
        closed: undefined,
        path: [
          { check: "valve-travel", part: "valve 3", found: "hangs", minutes: 2 },
          { plugs: { part: "casing 3", passes: [".6650 in"], stops: [] }, minutes: 10 },
        ],
        quoted: { minutes: 10, price: 12.5 },
      },
      "\nIt ran.\n\n",
    );
    expect(text).toBe(`---
id: 24-001
title: "Third valve: hangs"
path:
  - { check: valve-travel, part: valve 3, found: hangs, minutes: 2 }
  - plugs: { part: casing 3, passes: [ .6650 in ], stops: [] }
    minutes: 10
minutes: 12
quoted: { minutes: 10, price: 12.5 }
benchLamp:
  left: true
---

It ran.
`);
  });

  it("keeps the schema's order before fields that are named by a number", () => {
    const text = writeCase({ 7: "seven", title: "Third valve", id: "24-001" }, "");
    expect(text.split("\n").slice(1, 4)).toEqual(["id: 24-001", "title: Third valve", '"7": seven']);
  });

  it("writes a value out each time that it stands somewhere: aliases would be refused when it is read", () => {
    const hours = { from: 9, to: 17 };
    expect(writeCase({ id: "24-001", open: hours, shut: hours }, "")).not.toMatch(/[&*]/);
  });

  it("is read back as it was, unknown fields and those in its steps included", () => {
    fc.assert(
      fc.property(anyFields, anyStory, (fields, story) => {
        const sound = caseFieldsSchema.parse(fields);
        expect(read(writeCase(sound, story))).toEqual({ ...sound, story, file: "a.md" });
      }),
      { numRuns: 150 },
    );
  });

  it("is the same text again, to the byte, when it is read and written anew", () => {
    fc.assert(
      fc.property(anyFields, anyStory, (fields, story) => {
        const text = writeCase(caseFieldsSchema.parse(fields), story);
        expect(rewrite(text)).toBe(text);
      }),
      { numRuns: 150 },
    );
    expect(rewrite(rewrite(goodCase))).toBe(rewrite(goodCase));
  });
});
