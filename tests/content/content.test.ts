import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { parsePartRef } from "@/lib/casebook/partRef";
import { isPlugStep, isRepairStep } from "@/lib/casebook/step";
import { openBench } from "@/lib/consult/openBench";
import { readPlugs } from "@/lib/consult/readReadings";
import { formatProblem } from "@/lib/document/contentProblem";
import { publishSchemas } from "@/lib/publishing/publishSchemas";
import { splitWords } from "@/lib/text/terms";
import type { Frequency } from "@/lib/vocabulary/words";

const { bench, casebook, folders, problems } = openBench({});
const { vocabulary } = bench;
const { checks, causes, repairs } = vocabulary;
const cases = [...casebook.cases.values()];

/** Makers that exist nowhere: a demo case may name no other. */
const inventedMakers = [
  "Tarrant & Voss",
  "Marrowby",
  "Ostler Brothers",
  "Quillfeather",
  "Hasp & Dunnock",
  "Pellworm",
  "Stavely Grange",
  "Corvane",
];

const countWords = (text: string) => splitWords(text).length;
const sum = (numbers: readonly number[]) => numbers.reduce((total, number) => total + number, 0);
/** Those that break a rule, each with what it was caught at, so that a failure names them. */
const offenders = <Of extends { id: string }>(all: Iterable<Of>, fault: (one: Of) => unknown) =>
  [...all].flatMap((one) => {
    const found = fault(one);
    return found === undefined || found === false ? [] : [`${one.id}: ${String(found)}`];
  });

describe("the content", () => {
  it("has no problems", () => {
    expect(problems.map(formatProblem)).toEqual([]);
  });

  it("has a case for every file of the cases folder, each named after its id", () => {
    expect(cases.map(({ file }) => file)).toEqual(readdirSync(folders.cases).sort());
    expect(offenders(cases, ({ id, file }) => file !== `${id}.md` && file)).toEqual([]);
    expect(cases.length).toBeGreaterThanOrEqual(40);
  });

  it("has its schemas published as they are now (npm run -s schemas writes them)", () => {
    const folder = join(folders.content, "schema");
    const schemas = publishSchemas(vocabulary);
    expect(readdirSync(folder).sort()).toEqual(
      [...schemas.keys()].map((name) => `${name}.schema.json`).sort(),
    );
    for (const [name, schema] of schemas) {
      const written: unknown = JSON.parse(readFileSync(join(folder, `${name}.schema.json`), "utf8"));
      expect(written, name).toEqual(schema);
    }
  });
});

describe("every demo case", () => {
  it("says that it is invented, and names an invented maker", () => {
    expect(offenders(cases, ({ demo }) => !demo && "no demo: true")).toEqual([]);
    expect(
      offenders(cases, ({ maker }) => !inventedMakers.includes(maker ?? "") && `maker ${maker}`),
    ).toEqual([]);
  });

  it("took the minutes of its path", () => {
    const told = ({ path, minutes }: Case) => {
      const ofPath = sum(path.map((step) => step.minutes));
      return minutes !== ofPath && `minutes ${minutes}, path ${ofPath}`;
    };
    expect(offenders(cases, told)).toEqual([]);
  });

  it("went through five to twelve steps", () => {
    expect(offenders(cases, ({ path }) => (path.length < 5 || path.length > 12) && path.length)).toEqual([]);
  });

  it("has lessons of one sentence, twenty-five words at most", () => {
    const tooLong = ({ lessons }: Case) =>
      lessons.find((lesson) => countWords(lesson) > 25 || !/^[^.!?]+[.!?]$/.test(lesson));
    expect(offenders(cases, tooLong)).toEqual([]);
    expect(offenders(cases, ({ lessons }) => lessons.length === 0 && "no lesson")).toEqual([]);
  });

  it("has a story of 120 to 400 words", () => {
    const length = ({ story }: Case) => {
      const words = countWords(story);
      return (words < 120 || words > 400) && words;
    };
    expect(offenders(cases, length)).toEqual([]);
  });

  it("tells a story of its own: no two share half of their words", () => {
    const sets = cases.map(({ id, story }) => ({
      id,
      words: new Set(splitWords(story).map(({ text }) => text.toLowerCase())),
    }));
    const alike = sets.flatMap((a, at) =>
      sets.slice(at + 1).flatMap((b) => {
        const shared = [...a.words].filter((word) => b.words.has(word)).length;
        const likeness = shared / (a.words.size + b.words.size - shared);
        return likeness >= 0.5 ? [`${a.id} and ${b.id}: ${likeness.toFixed(2)}`] : [];
      }),
    );
    expect(alike).toEqual([]);
  });
});

const atLeastOften: readonly Frequency[] = ["always", "usually", "often"];
const atMostRarely: readonly Frequency[] = ["rarely", "never"];

describe("the handbook", () => {
  it("says of every cause what speaks for it and what speaks against it", () => {
    const oneSided = ({
      findings,
    }: {
      findings: Readonly<Record<string, Readonly<Record<string, Frequency>>>>;
    }) => {
      const words = Object.values(findings).flatMap((outcomes) => Object.values(outcomes));
      if (!words.some((word) => atLeastOften.includes(word))) return "nothing often or more";
      return !words.some((word) => atMostRarely.includes(word)) && "nothing rarely or never";
    };
    expect(offenders(causes.values(), oneSided)).toEqual([]);
  });

  it("has no check that tells nothing: each is a finding of some cause", () => {
    const used = new Set(
      [...causes.values()].flatMap(({ findings, others }) => [
        ...Object.keys(findings),
        ...Object.keys(others),
      ]),
    );
    expect(offenders(checks.values(), ({ id }) => !used.has(id) && "in no cause")).toEqual([]);
  });

  it("has no repair that mends nothing: each answers some cause", () => {
    const used = new Set([...causes.values()].flatMap((cause) => cause.repairs));
    expect(offenders(repairs.values(), ({ id }) => !used.has(id) && "in no cause")).toEqual([]);
  });
});

/** What the handbook says of a tight place in the bore where this cause is at work. */
function tightPlace(causeId: string): Frequency | undefined {
  const gauge = [...checks.values()].find(({ reads }) => reads === "reduction");
  const tight = gauge?.outcomes.find(({ measured }) => measured?.overThou !== undefined);
  return gauge && tight && causes.get(causeId)?.findings[gauge.id]?.[tight.id];
}

describe("the plug gauges of the demo cases", () => {
  const gauged = cases.flatMap((kase) => {
    const cured = kase.path.findIndex((step) => isRepairStep(step) && step.result === "fixed");
    const before = cured < 0 ? kase.path : kase.path.slice(0, cured);
    const roots = kase.causes.filter(({ role }) => role === "root").map(({ cause }) => tightPlace(cause));
    return before.filter(isPlugStep).flatMap(({ plugs, reference }) => {
      const part = parsePartRef(plugs.part);
      if (!part || !reference) return [];
      const { result } = readPlugs({ part, passes: plugs.passes, stops: plugs.stops, reference }, vocabulary);
      return [{ id: kase.id, roots, reductionThou: result.reductionThou, flags: result.flags }];
    });
  });

  it("show a reduction over none where the root cause is one that makes a tight place as a rule", () => {
    const tight = gauged.filter(({ roots }) => roots.some((word) => word && atLeastOften.includes(word)));
    expect(tight.length).toBeGreaterThan(0);
    expect(
      offenders(tight, ({ reductionThou }) => !((reductionThou?.low ?? 0) > 0) && "no reduction"),
    ).toEqual([]);
  });

  it("show none where the root cause never makes a tight place", () => {
    const sound = gauged.filter(({ roots }) => roots.every((word) => word === "never"));
    expect(sound.length).toBeGreaterThan(0);
    expect(offenders(sound, ({ reductionThou }) => (reductionThou?.low ?? 0) > 0 && "a reduction")).toEqual(
      [],
    );
  });

  it("do not contradict themselves", () => {
    expect(offenders(gauged, ({ flags }) => flags.find((flag) => flag.startsWith("contradiction")))).toEqual(
      [],
    );
  });
});

describe("the outcome of a demo case", () => {
  it("is 'fixed' where a repair fixed it, and only there", () => {
    const mismatch = ({ outcome, path }: Case) => {
      const isFixed = path.some((step) => isRepairStep(step) && step.result === "fixed");
      return (outcome === "fixed") !== isFixed && `${outcome}, and ${isFixed ? "a" : "no"} repair fixed it`;
    };
    expect(offenders(cases, mismatch)).toEqual([]);
  });
});
