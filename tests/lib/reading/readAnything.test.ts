import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { readPart } from "@/lib/reading/parts/readPart";
import { readEvidence } from "@/lib/reading/readEvidence";
import { buildReader } from "@/lib/reading/reader";
import { readFindings } from "@/lib/reading/readFindings";
import { readInstrument } from "@/lib/reading/readInstrument";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";
import { smallReader, smallVocabulary } from "./smallVocabulary";

const shippedReader = buildReader(loadVocabulary("content/vocabulary").vocabulary);
const readers = { "the small vocabulary": smallReader, "the vocabulary that ships": shippedReader } as const;

/** Words that mean something, in any order and with any marks between: the readings meet and overlap. */
const benchWords = fc
  .array(
    fc.constantFrom(
      ..."2nd,3,first,valve,piston,casing,sticks,hangs,no,not,but,or,and,dents,lime,bell,bent,others,fine,in".split(
        ",",
      ),
      ..."into,runs,free,maybe,ruled,out,half,way,down,1/4,.002,thou,w/o,halfway,other,two,spring,stikcs".split(
        ",",
      ),
      ...[",", ".", ":", "(", ")", " - ", "\n", "—", ";", "?"],
    ),
    { maxLength: 60 },
  )
  .map((words) => words.join(" "));
const anyText = fc.oneof(
  benchWords,
  fc.string({ unit: "binary", maxLength: 300 }),
  fc.string({ unit: "grapheme", maxLength: 120 }),
  fc.lorem({ maxCount: 30 }),
);
const oddTexts: readonly (readonly [string, string])[] = [
  ["emoji", "2nd valve 🎺🔧 sticks 👩‍🔧👨🏽‍🏭 !!"],
  ["letters that run from right to left", "שסתום 2 תקוע ‏valve 2 sticks‎ صمام"],
  ["control characters", "valve 2\u0000 sticks\u0007\u001b[31m\u007f\u0085 no\u200b dents"],
  ["half a surrogate pair", "valve \ud83c sticks \udf7a"],
  ["what a pattern would take as its own", "(.*)+$ [a-z]{2,} \\d \\1 ^| ?: valve 2 sticks ("],
  ["names that objects carry by themselves", "constructor __proto__ toString hasOwnProperty valve 2 sticks"],
  ["letters that grow when they are made small", "İİİ ﬃ ß ŉ valve 2 sticks"],
  ["5,000 characters without a blank", "x".repeat(5000)],
  ["5,000 characters of digits", "1".repeat(5000)],
  ["5,000 characters of marks", "'’/.,".repeat(1000)],
  ["5,000 characters of one sentence", "2nd valve sticks no dents ".repeat(193)],
];

describe.each(Object.entries(readers))("reading by %s", (_, reader) => {
  const spansAreTrue = (text: string, instrument?: string) => {
    const { findings, swaps, notUnderstood } = readFindings(text, reader, instrument);
    for (const { span, from } of [...findings, ...swaps]) {
      expect(span[0]).toBeGreaterThanOrEqual(0);
      expect(span[1]).toBeGreaterThan(span[0]);
      expect(span[1]).toBeLessThanOrEqual(text.length);
      expect(text.slice(...span)).toBe(from);
    }
    for (const run of notUnderstood) expect(text).toContain(run);
  };

  it("never throws, whatever is written, and every finding shows the words it was read from", () => {
    fc.assert(
      fc.property(anyText, fc.constantFrom("trumpet", "violin", undefined), (text, instrument) => {
        spansAreTrue(text, instrument);
      }),
      { numRuns: 150 },
    );
  });

  it.each(oddTexts)("takes %s", (_name, text) => {
    spansAreTrue(text, "trumpet");
    readInstrument(text, reader);
    readPart(text, reader, "trumpet");
    readEvidence({ check: text, found: text, part: text }, reader, "trumpet");
  });

  it("reads only checks and outcomes that the vocabulary has, one for each check and part", () => {
    fc.assert(
      fc.property(benchWords, (text) => {
        const { findings } = readFindings(text, reader, "trumpet");
        for (const { check, outcome } of findings) {
          const outcomes = reader.vocabulary.checks.get(check)?.outcomes ?? [];
          expect(outcomes.map(({ id }) => id)).toContain(outcome);
        }
        const places = findings.map(
          ({ check, part }) => `${check} ${part?.others ?? false} ${part?.place ?? ""}`,
        );
        expect(new Set(places).size).toBe(places.length);
      }),
      { numRuns: 100 },
    );
  });

  it("reads the same text the same way, whatever was read before", () => {
    fc.assert(
      fc.property(benchWords, anyText, (text, before) => {
        const first = readFindings(text, reader, "trumpet");
        readFindings(before, reader, "trumpet");
        expect(readFindings(text, reader, "trumpet")).toEqual(first);
      }),
      { numRuns: 60 },
    );
  });

  it("never throws on evidence, parts and instruments of any words", () => {
    fc.assert(
      fc.property(anyText, anyText, (check, found) => {
        const { finding: read, mayMean } = readEvidence({ check, found, part: found }, reader, undefined);
        expect(mayMean.reduce((sum, { share }) => sum + share, 0)).toBeLessThanOrEqual(1 + 1e-9);
        if (read) expect(reader.vocabulary.checks.has(read.check)).toBe(true);
        const instrument = readInstrument(found, reader);
        if (instrument !== undefined) expect(reader.vocabulary.instruments.has(instrument)).toBe(true);
        const part = readPart(found, reader, undefined);
        if (part) expect(reader.vocabulary.parts.has(part.part)).toBe(true);
      }),
      { numRuns: 100 },
    );
  });
});

describe("a reader", () => {
  it("reads as another built from the same vocabulary", () => {
    const other = buildReader(smallVocabulary);
    fc.assert(
      fc.property(benchWords, (text) => {
        expect(readFindings(text, other, "trumpet")).toEqual(readFindings(text, smallReader, "trumpet"));
      }),
      { numRuns: 60 },
    );
  });
});
