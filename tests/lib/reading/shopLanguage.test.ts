import { describe, expect, it } from "vitest";
import { formatPartRef } from "@/lib/casebook/partRef";
import { buildReader } from "@/lib/reading/reader";
import { readFindings } from "@/lib/reading/readFindings";
import { readInstrument } from "@/lib/reading/readInstrument";
import { loadVocabulary } from "@/lib/vocabulary/loadVocabulary";

/*
 * A handful of bench sentences over the vocabulary that ships: its words and the rules of reading must fit together.
 */
const reader = buildReader(loadVocabulary("content/vocabulary").vocabulary);
const read = (text: string) => readFindings(text, reader, "trumpet");
const lines = (text: string) =>
  read(text).findings.map(
    ({ check, outcome, part, absent }) =>
      `${check} ${outcome}${part ? ` ${formatPartRef(part)}` : ""}${absent ? " -" : ""}`,
  );

describe("shop language by the vocabulary that ships", () => {
  it("reads a complaint with its siblings", () => {
    expect(lines("2nd valve hangs halfway down. Other two run free")).toEqual([
      "valve-travel hangs valve 2",
      "where-it-catches halfway valve 2",
      "valve-travel free other valve",
    ]);
  });

  it("ends a denied list at what is told for itself, whatever is denied later", () => {
    const told = lines("No dents, quick and free with the bottom cap off, and no grit or lime");
    expect(told).toContainEqual(expect.stringMatching(/^bottom-cap-off frees(?!.* -$)/));
    expect(told).toContainEqual(expect.stringMatching(/^look-deposits clean.* -$/));
    expect(lines("No dents, grit or lime").every((line) => line.endsWith(" -"))).toBe(true);
  });

  it("takes the name of an instrument for no slip of a mishap", () => {
    const { findings } = readFindings("bass bone slide drags", reader, "bass-trombone");
    expect(findings.map(({ check }) => check)).toEqual(["hand-slide-travel"]);
  });

  it("reads 'others fine' and '1st and 3rd fine' as how the siblings travel", () => {
    expect(lines("valve 3 hangs, others fine")).toEqual([
      "valve-travel hangs valve 3",
      "valve-travel free other valve",
    ]);
    expect(lines("2nd valve hangs. 1st and 3rd fine").sort()).toEqual([
      "valve-travel free valve 1",
      "valve-travel free valve 3",
      "valve-travel hangs valve 2",
    ]);
  });

  it("reads a place in the stroke as no valve's number", () => {
    expect(lines("2nd valve hangs a third of the way down")).toEqual([
      "valve-travel hangs valve 2",
      "where-it-catches third valve 2",
    ]);
    expect(lines("2nd valve hangs last 1/4 in")).toContain("where-it-catches bottom valve 2");
  });

  it("reads what was denied, and where the denial ends", () => {
    expect(lines("no dents but bell bent")).toEqual(["look-casing sound -", "look-bell-stem bent bell"]);
    expect(lines("valve 2 doesn't stick")).toEqual(["valve-travel free valve 2 -"]);
    expect(lines("valve no 2 sticks")).toEqual(["valve-travel hangs valve 2"]);
  });

  it("reads a treatment with its result", () => {
    expect(lines("valve was sticking, cleaned it, no change")).toContain("clean-response no-change");
  });

  it("reads swaps", () => {
    const { swaps, findings } = read("piston 2 in casing 3 hangs. piston 3 runs fine in 2");
    expect(swaps.map(({ a, b, result }) => `${formatPartRef(a)} ${formatPartRef(b)} ${result}`)).toEqual([
      "piston 2 casing 3 sticks",
      "piston 3 casing 2 free",
    ]);
    expect(findings).toEqual([]);
  });

  it.each([
    ["piston 2 in casing 1 drags at two thirds", { where: "two-thirds" }],
    ["piston 2 in casing 1 sticks halfway, coming up only", { where: "halfway", way: "up" }],
    ["2nd piston in 1 binds turned a third", { turned: "third" }],
    ["piston 2 in casing 1 sticks only when turned half round", { turned: "half" }],
    ["piston 2 in casing 1 sticks turned 180 degrees", { turned: "half" }],
    ["piston 2 in casing 1 sticks turned 90 degrees", { turned: "quarter" }],
    ["piston 2 in casing 1 sticks, spring weak", {}],
    ["piston 2 in casing 1 runs free all the way down", {}],
  ])("reads from '%s' what the result depended on, and that alone", (text, how) => {
    const { swaps, notUnderstood, findings } = read(text);
    expect(swaps.map((swap) => swap.how)).toEqual([how]);
    expect(notUnderstood).toEqual([]);
    if (Object.keys(how).length > 0) expect(findings).toEqual([]);
  });

  it("leaves to the next swap and to the next valve what is said of them", () => {
    const text =
      "piston 2 in casing 1 sticks, piston 1 in casing 2 drags halfway, 3rd valve hangs at the top";
    const { swaps } = read(text);
    expect(swaps.map(({ how }) => how)).toEqual([{}, { where: "halfway" }]);
    expect(lines(text)).toEqual(["valve-travel hangs valve 3", "where-it-catches top valve 3"]);
  });

  it("reports strange words", () => {
    expect(read("2nd valve hangs, qwfp zxcv").notUnderstood).toEqual(["qwfp zxcv"]);
  });

  it.each([
    ["4 valve euph", "euphonium"],
    ["TPT", "trumpet"],
    ["violin", "violin"],
    ["trumpte", "trumpet"],
    ["zzz", undefined],
  ])("knows the instrument behind '%s'", (words, instrument) => {
    expect(readInstrument(words, reader)).toBe(instrument);
  });

  it.each([
    ["bari", "pads leak on the low keys", "baritone-saxophone"],
    ["bari", "2nd valve sticks", "baritone"],
    ["CC tuba", "rotor 2 sticks, bearing plate looks proud", "rotary-tuba"],
    ["CC tuba", "2nd piston sticks in its casing", "tuba"],
    ["tuba", "", "tuba"],
  ])("settles the shared name '%s' by the parts spoken of: %s", (words, says, instrument) => {
    expect(readInstrument(words, reader, says)).toBe(instrument);
  });

  // Ten thousand phrases, on however busy a machine: the limit is there only to end a hang.
  it("reads every outcome's own phrases as that check, on an instrument that has it", {
    timeout: 180_000,
  }, () => {
    const { checks } = reader.vocabulary;
    const missed = [...checks.values()].flatMap(({ id, families, outcomes }) =>
      outcomes.flatMap(({ synonyms }) =>
        synonyms.filter((phrase) => {
          const { findings } = readFindings(phrase, reader, families[0]);
          return !findings.some(({ check }) => check === id);
        }),
      ),
    );
    const all = [...checks.values()].flatMap(({ outcomes }) => outcomes.flatMap(({ synonyms }) => synonyms));
    expect(missed.length / all.length).toBeLessThan(0.1);
  });
});
