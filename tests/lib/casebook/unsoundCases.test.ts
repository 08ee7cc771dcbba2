import { describe, expect, it } from "vitest";
import { change, goodCase } from "@/tests/fixtures/goodCase";
import { type BadFile, broken, file, loadBeside, withField } from "./caseFolder";

const aDay = "a day that exists, written year-month-day, such as 2026-03-09";
const anId = "lower-case words joined by hyphens, such as casing-dented";
const aStep = "a step that begins with check, swap, plugs, bore, leak or repair";

const unsound: readonly BadFile[] = [
  {
    title: "values of the wrong type, all told at once",
    content: [
      ["title: Third valve hangs when warm", "title: [a, b]"],
      ["status: closed", "status: closd"],
      ["received: 2024-03-04", "received: 20240304"],
      ["minutes: 12", "minutes: a dozen"],
    ].reduce((text, [from = "", to = ""]) => change(text, from, to), goodCase),
    lines: [
      `${file}:3 title: found ["a","b"]; write words`,
      `${file}:4 status: found 'closd'; write 'closed' (one of: open, closed)`,
      `${file}:6 received: found 20240304; write ${aDay}`,
      `${file}:15 minutes: found 'a dozen'; write a number`,
    ],
  },
  {
    title: "fields that are missing, all told at once",
    content: "---\nid: 24-001\n---\n",
    lines: ["title", "status", "instrument", "received", "complaint"].map(
      (field) => new RegExp(`^24-001\\.md:2 ${field}: found nothing; write `),
    ),
  },
  {
    title: "an id that is a bare number",
    content: broken("id: 24-001", "id: 24"),
    lines: [`${file}:2 id: found 24; write words in quotes, such as '24'`],
  },
  {
    title: "an id that climbs out of the folder",
    content: broken("id: 24-001", "id: ../../etc/x"),
    lines: [`${file}:2 id: found '../../etc/x'; write ${anId}`],
  },
  {
    title: "an id with a zero byte behind a backslash",
    content: broken("id: 24-001", 'id: "24-001\\0"'),
    lines: [`${file}:2 id: found '24-001 '; write ${anId}`],
  },
  {
    title: "ids that the vocabulary does not know, each with the one that was meant",
    content: [
      ["instrument: cornet", "instrument: cornt"],
      ["check: valve-travel", "check: valve-travle"],
      ["repair: clean-and-oil", "repair: clean-an-oil"],
      ["cause: gummed-oil", "cause: gumed-oil"],
    ].reduce((text, [from = "", to = ""]) => change(text, from, to), goodCase),
    lines: [
      `${file}:5 instrument: found 'cornt'; write 'cornet', or another known instrument`,
      `${file}:10 path.0.check: found 'valve-travle'; write 'valve-travel', or another known check`,
      `${file}:11 path.1.repair: found 'clean-an-oil'; write 'clean-and-oil', or another known repair`,
      `${file}:13 causes.0.cause: found 'gumed-oil'; write 'gummed-oil', or another known cause`,
    ],
  },
  {
    title: "an instrument that is like none there is",
    content: broken("instrument: cornet", "instrument: hurdy-gurdy"),
    lines: [`${file}:5 instrument: found 'hurdy-gurdy'; write the id of a known instrument`],
  },
  {
    title: "an outcome that its check does not have",
    content: broken("found: hangs", "found: hang"),
    lines: [`${file}:10 path.0.found: found 'hang'; write 'hangs', or another known outcome of valve-travel`],
  },
  {
    title: "a place in the stroke that the check of places does not have",
    content: broken("where: halfway", "where: halfwy"),
    lines: [
      `${file}:10 path.0.where: found 'halfwy'; write 'halfway', or another known outcome of where-it-catches`,
    ],
  },
  {
    title: "a turn that the words of reading do not know",
    content: broken(
      "check: valve-travel, part: valve 3, found: hangs, where: halfway",
      "swap: [piston 3, casing 1], found: sticks, turned: hafl",
    ),
    lines: [`${file}:10 path.0.turned: found 'hafl'; write 'half', or another known turn of swapTurns`],
  },
  {
    title: "a part that is not known",
    content: broken("part: valve 3, found", "part: valv 3, found"),
    lines: [`${file}:10 path.0.part: found 'valv'; write 'valve', or another known part`],
  },
  {
    title: "a part that is no part at all",
    content: broken("part: valve 3, found", "part: the third valve, found"),
    lines: [
      `${file}:10 path.0.part: found 'the third valve'; write a part id with its number, such as: casing 2, bell-stem, other valve`,
    ],
  },
  {
    title: "casing 9 on an instrument of three valves",
    content: broken("part: valve 3, role", "part: casing 9, role"),
    lines: [`${file}:13 causes.0.part: found 'casing 9'; write a number from 1 to 3 on this instrument`],
  },
  {
    title: "a first thought that is no cause",
    content: withField("firstThought: casing-dentd"),
    lines: [`${file}:3 firstThought: found 'casing-dentd'; write 'casing-dented', or another known cause`],
  },
  {
    title: "the 31st of February",
    content: broken("received: 2024-03-04", "received: 2024-02-31"),
    lines: [`${file}:6 received: found '2024-02-31'; write ${aDay}`],
  },
  {
    title: "the 29th of February of a year that has none",
    content: broken("received: 2024-03-04", "received: 2023-02-29"),
    lines: [`${file}:6 received: found '2023-02-29'; write ${aDay}`],
  },
  {
    title: "closed before it was received",
    content: broken("closed: 2024-03-06", "closed: 2024-03-03"),
    lines: [`${file}:7 closed: found '2024-03-03'; write a day no earlier than the day it was received`],
  },
  {
    title: "fewer minutes than none",
    content: broken("minutes: 10", "minutes: -5"),
    lines: [`${file}:11 path.1.minutes: found -5; write a number of 0 or more`],
  },
  {
    title: "minutes that are no number",
    content: broken("minutes: 10", "minutes: .nan"),
    lines: [`${file}:11 path.1.minutes: found NaN; write a number`],
  },
  {
    title: "minutes without end",
    content: broken("minutes: 12", "minutes: .inf"),
    lines: [`${file}:15 minutes: found Infinity; write a number`],
  },
  {
    title: "more minutes than two working weeks",
    content: broken("minutes: 12", "minutes: 4801"),
    lines: [`${file}:15 minutes: found 4801; write a number of 4800 or less`],
  },
  {
    title: "a step of no kind there is",
    content: broken("check: valve-travel", "look: valve-travel"),
    lines: [
      `${file}:10 path.0: found {"look":"valve-travel","part":"valve 3","found":"hangs","wh…; write ${aStep}`,
    ],
  },
  {
    title: "a step in running words",
    content: broken(
      "  - { repair: clean-and-oil, part: valve 3, result: fixed, minutes: 10 }",
      "  - oiled it",
    ),
    lines: [`${file}:11 path.1: found 'oiled it'; write ${aStep}`],
  },
  {
    title: "a step of two kinds at once",
    content: broken("result: fixed", "result: fixed, check: valve-travel, found: free"),
    lines: [`${file}:11 path.1.repair: found repair beside check; write a step of its own for it`],
  },
  {
    title: "a repair that does not say how it ended",
    content: broken(" result: fixed,", ""),
    lines: [`${file}:11 path.1.result: found nothing; write one of: fixed, better, no-change, harm`],
  },
  {
    title: "a swap test with one part",
    content: broken(
      "{ check: valve-travel, part: valve 3, found: hangs,",
      "{ swap: [piston 3], found: sticks,",
    ),
    lines: [`${file}:10 path.0.swap: found ["piston 3"]; write at least 2 entries`],
  },
  {
    title: "a path of ten thousand steps",
    content: broken(
      "path:",
      `path:\n${"  - { check: valve-travel, found: free }\n".repeat(10_000)}`.trimEnd(),
    ),
    lines: [/^24-001\.md:10 path: found \[\{"check".*; write at most 200 entries$/],
  },
  {
    title: "closed, with no cause",
    content: broken("causes:\n  - { cause: gummed-oil, part: valve 3, role: root }\n", ""),
    lines: [`${file}:2 causes: found nothing; write at least one cause with role: root`],
  },
  {
    title: "closed, with a cause that only helped",
    content: broken("role: root", "role: contributing"),
    lines: [
      `${file}:13 causes: found [{"cause":"gummed-oil","part":"valve 3","role":"contributin…; write at least one cause with role: root`,
    ],
  },
  {
    title: "closed, without day, outcome or minutes",
    content: [
      ["closed: 2024-03-06\n", ""],
      ["outcome: fixed\n", ""],
      ["minutes: 12\n", ""],
    ].reduce((text, [from = "", to = ""]) => change(text, from, to), goodCase),
    lines: [
      /:2 closed: found nothing; write the day the job was closed/,
      /:2 outcome: found nothing; write how it ended/,
      /:2 minutes: found nothing; write the minutes that the job took$/,
    ],
  },
];

describe("a case file that says what cannot be is set aside, says what to mend, and leaves the cases beside it standing", () => {
  it.each(unsound)("with $title", ({ content, lines }) => {
    const loaded = loadBeside(content);
    expect(loaded.ids).toEqual(["23-900", "25-900"]);
    expect(loaded.lines).toEqual(
      lines.map((line) => (typeof line === "string" ? line : expect.stringMatching(line))),
    );
  });
});
