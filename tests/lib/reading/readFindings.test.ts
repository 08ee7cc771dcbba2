import { describe, expect, it } from "vitest";
import { formatPartRef } from "@/lib/casebook/partRef";
import { readFindings } from "@/lib/reading/readFindings";
import { smallReader } from "./smallVocabulary";

const read = (text: string, instrument: string | undefined = "trumpet") =>
  readFindings(text, smallReader, instrument);
/** Each finding in one line: check, outcome, part; `-` denied, `?` doubted. */
const lines = (text: string, instrument?: string) =>
  read(text, instrument).findings.map(
    ({ check, outcome, part, absent, doubtful }) =>
      `${check} ${outcome}${part ? ` ${formatPartRef(part)}` : ""}${absent ? " -" : ""}${doubtful ? " ?" : ""}`,
  );
const swaps = (text: string) =>
  read(text).swaps.map(({ a, b, result }) => `${formatPartRef(a)} in ${formatPartRef(b)} ${result}`);

describe("phrases", () => {
  it("reads a phrase of the vocabulary with its part and number", () => {
    for (const text of ["2nd valve sticks", "valve 2 sticks", "second valve sticks", "vlv 2 sticks"]) {
      expect(lines(text)).toEqual(["travel hangs valve 2"]);
    }
  });

  it("reads a bare number that opens a clause, and an ordinal, as the instrument's counted part", () => {
    expect(lines("2 sticks")).toEqual(["travel hangs valve 2"]);
    expect(lines("3rd sticks")).toEqual(["travel hangs valve 3"]);
  });

  it("reads 'no' before a number as 'number', not as a denial", () => {
    expect(lines("valve no 2 sticks")).toEqual(["travel hangs valve 2"]);
    expect(lines("valve no. 2 sticks")).toEqual(["travel hangs valve 2"]);
    expect(lines("no 2 sticks")).toEqual(["travel hangs valve 2"]);
    expect(lines("no dents in 2")).toEqual(["casing-look sound -"]);
  });

  it("forgives one slip of the typewriter", () => {
    for (const slip of ["stikcs", "stickks", "stcks", "spicks"]) {
      expect(lines(`2nd valve ${slip}`)).toEqual(["travel hangs valve 2"]);
    }
  });

  it("does not forgive two slips in a short word", () => {
    expect(lines("2nd valve spocks")).toEqual([]);
  });

  it("does not take a word of the handbook's prose for a slip of another", () => {
    // "stacks" is one letter from "sticks", and stands in a cause's prose.
    expect(lines("2nd valve stacks")).toEqual([]);
    expect(read("2nd valve stacks").notUnderstood).toEqual(["stacks"]);
  });

  it("does not read a check of another family", () => {
    expect(lines("pad torn", "clarinet")).toEqual(["pad-look torn pad"]);
    expect(lines("pad torn", "trumpet")).toEqual([]);
  });

  it("reads checks of every family where the instrument is not known", () => {
    const known = readFindings("pad torn. bell bent", smallReader, undefined).findings;
    expect(known.map(({ check }) => check)).toEqual(["pad-look", "bell-look"]);
  });

  it("takes the worst of what is said on a scale, and trouble before soundness elsewhere", () => {
    expect(lines("valve 2 drags. valve 2 hangs. valve 2 drags")).toEqual(["travel hangs valve 2"]);
    expect(lines("spotless. lime")).toEqual(["deposits lime"]);
    expect(lines("lime. spotless")).toEqual(["deposits lime"]);
  });

  it("takes what is sure before what was doubted", () => {
    expect(lines("maybe lime. spotless")).toEqual(["deposits clean"]);
    expect(lines("spotless. maybe lime")).toEqual(["deposits clean"]);
  });
});

describe("denial", () => {
  it("denies what follows", () => {
    expect(lines("no dents")).toEqual(["casing-look sound -"]);
    expect(lines("w/o dents")).toEqual(["casing-look sound -"]);
    expect(lines("valve 2 does not hang")).toEqual(["travel free valve 2 -"]);
  });

  it("denies what stands before", () => {
    expect(lines("dents ruled out")).toEqual(["casing-look sound -"]);
    expect(lines("dents: not there")).toEqual(["casing-look sound -"]);
  });

  it("denies from inside the phrase", () => {
    expect(lines("dent not in casing")).toEqual(["casing-look sound casing -"]);
  });

  it("means what the outcome says its denial means, else the check's normal outcome", () => {
    expect(lines("valve 2 does not run free")).toEqual(["travel drags valve 2 -"]);
    expect(lines("bell not straight")).toEqual(["bell-look bent bell -"]);
  });

  it("ends at 'but'", () => {
    expect(lines("no dents but bell bent")).toEqual(["casing-look sound -", "bell-look bent bell"]);
  });

  it("ends at the comma, unless an 'or' carries it through the list", () => {
    expect(lines("no dents, bell bent")).toEqual(["casing-look sound -", "bell-look bent bell"]);
    expect(lines("no dents, lime or bends")).toEqual([
      "casing-look sound -",
      "deposits clean -",
      "bell-look straight -",
    ]);
  });

  it("is never read into a phrase that has it and a text that has not", () => {
    expect(lines("light shows under rim")).toEqual(["bell-look bent"]);
    expect(lines("no light shows under rim")).toEqual(["bell-look straight"]);
  });

  it("is part of what the finding was read from", () => {
    expect(read("2nd valve: no dents at all").findings[0]?.from).toBe("no dents");
  });
});

describe("doubt", () => {
  it("marks what was said with doubt, or of long ago, in the same clause", () => {
    expect(lines("maybe dents")).toEqual(["casing-look dented ?"]);
    expect(lines("dents years ago")).toEqual(["casing-look dented ?"]);
    expect(lines("maybe dents, bell bent")).toEqual(["casing-look dented ?", "bell-look bent bell"]);
  });
});

describe("beliefs", () => {
  const beliefs = (text: string) => read(text).believed.map(([from, to]) => text.slice(from, to));

  it("are told from what was seen, up to the end of the clause", () => {
    const text = "2nd valve sticks, owner is sure casing dented but bell bent";
    expect(beliefs(text)).toEqual(["is sure casing dented"]);
    expect(read(text).findings.map(({ check, how }) => [check, how])).toEqual([
      ["travel", undefined],
      ["casing-look", "believed"],
      ["bell-look", undefined],
    ]);
  });

  it("put behind what they are about take up the whole clause", () => {
    expect(beliefs("valve 2 sticks, dents he thinks")).toEqual(["dents he thinks"]);
  });
});

describe("parts", () => {
  it("reads what is said of the siblings as about them", () => {
    expect(lines("2nd valve hangs. Other two run free")).toEqual([
      "travel hangs valve 2",
      "travel free other valve",
    ]);
    expect(lines("valve 3 hangs, others fine")).toEqual(["travel hangs valve 3", "travel free other valve"]);
  });

  it("carries the number of a valve over sentences that name none", () => {
    expect(lines("3rd valve hangs. It was dropped. Dents")).toEqual([
      "travel hangs valve 3",
      "knock dropped casing 3",
      "casing-look dented casing 3",
    ]);
  });

  it("does not carry a number to a part that is not of the valve", () => {
    expect(lines("3rd valve hangs. bell bent")).toEqual(["travel hangs valve 3", "bell-look bent bell"]);
  });

  it("does not carry the siblings on", () => {
    expect(lines("3rd valve hangs. Others run free. Lime")).toContain("deposits lime piston 3");
  });

  it("gives what is said of two numbers at once to both", () => {
    expect(lines("1st and 3rd run free").sort()).toEqual(["travel free valve 1", "travel free valve 3"]);
    expect(lines("1st and 3rd fine").sort()).toEqual(["travel free valve 1", "travel free valve 3"]);
    expect(lines("1 and 2 run free").sort()).toEqual(["travel free valve 1", "travel free valve 2"]);
  });

  it("reads a part that is fine as sound by its own check", () => {
    expect(lines("spring fine")).toEqual(["spring-look right spring"]);
    expect(lines("spring not fine")).toEqual([]);
  });

  it("does not take a place in the stroke for the number of a valve", () => {
    expect(lines("2nd valve hangs a third of the way down")).toEqual([
      "travel hangs valve 2",
      "place third valve 2",
    ]);
    expect(lines("2nd valve hangs 1/3 down")).toEqual(["travel hangs valve 2", "place third valve 2"]);
    expect(lines("2nd valve hangs halfway down")).toEqual(["travel hangs valve 2", "place half valve 2"]);
    expect(lines("2nd valve hangs last 1/4 in")).toEqual(["travel hangs valve 2", "place last-bit valve 2"]);
  });

  it("does not take a measure for the number of a valve", () => {
    expect(read("2 thou").findings).toEqual([]);
    expect(lines("hangs by .002")).toEqual(["travel hangs"]);
  });
});

describe("swap tests", () => {
  it("reads a piston that was tried in another casing", () => {
    expect(swaps("piston 3 runs fine in 1")).toEqual(["piston 3 in casing 1 free"]);
    expect(swaps("2nd piston in casing 1 still hangs")).toEqual(["piston 2 in casing 1 sticks"]);
    expect(swaps("valve 2 into casing 3 drags")).toEqual(["piston 2 in casing 3 drags"]);
  });

  it("does not read its result as how the valve travels", () => {
    expect(lines("piston 3 runs free in casing 1")).toEqual([]);
    expect(lines("2nd piston in casing 1 still hangs")).toEqual([]);
  });

  it("reads two tests of one sentence", () => {
    const text = "2nd piston in casing 3 hangs, 3rd piston in casing 2 runs free";
    expect(swaps(text)).toEqual(["piston 2 in casing 3 sticks", "piston 3 in casing 2 free"]);
    expect(lines(text)).toEqual([]);
  });

  it("reads no swap in a part's own place, nor without a result", () => {
    expect(swaps("piston 3 in casing 3 hangs")).toEqual([]);
    expect(swaps("tried piston 3 in casing 1")).toEqual([]);
  });
});

describe("what nothing took up", () => {
  it("is given in the technician's own words, run by run", () => {
    expect(read("2nd valve sticks, blorpf wibble. frob").notUnderstood).toEqual(["blorpf wibble", "frob"]);
  });

  it("leaves out parts, instruments and small words", () => {
    expect(read("the valve of the trumpet, maybe not").notUnderstood).toEqual([]);
  });

  it("is everything where nothing is known", () => {
    expect(read("")).toEqual({ findings: [], swaps: [], notUnderstood: [], clauses: [], believed: [] });
    expect(read("blorpf").notUnderstood).toEqual(["blorpf"]);
  });
});
