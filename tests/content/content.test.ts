import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import type { Case } from "@/lib/casebook/caseFile";
import { parsePartRef } from "@/lib/casebook/partRef";
import { rootCauses } from "@/lib/casebook/rootCauses";
import { isPlugStep, isRepairStep } from "@/lib/casebook/step";
import { openBench } from "@/lib/consult/bench/openBench";
import { consult } from "@/lib/consult/consult";
import { keyFindings, parseFindingKey } from "@/lib/consult/keyFindings";
import { problemSchema } from "@/lib/consult/problem";
import { caseFindings } from "@/lib/consult/record/caseFindings";
import { readPlugs } from "@/lib/consult/understand/readReadings";
import { formatProblem } from "@/lib/document/contentProblem";
import { estimateCoverage } from "@/lib/evaluation/estimateCoverage";
import { publishSchemas } from "@/lib/publishing/publishSchemas";
import { splitWords } from "@/lib/text/terms";
import type { Cause } from "@/lib/vocabulary/cause";
import type { Check } from "@/lib/vocabulary/check";
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

/** Runs of vowels, a silent e at the end left out: near enough for a reading measure. */
const countSyllables = (word: string) =>
  Math.max(
    1,
    word
      .toLowerCase()
      .replace(/e$/, "")
      .match(/[aeiouy]+/g)?.length ?? 1,
  );
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
    expect(cases.length).toBeGreaterThanOrEqual(180);
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

  it("has lessons that an apprentice reads at one go: Flesch reading ease of 50 or more", () => {
    // Flesch 1948: 206.835 - 1.015 words a sentence - 84.6 syllables a word; 50 and over is fairly plain English.
    const ease = (lesson: string) => {
      const words = splitWords(lesson);
      const syllables = sum(words.map(({ text }) => countSyllables(text)));
      return 206.835 - 1.015 * words.length - (84.6 * syllables) / words.length;
    };
    const hard = ({ lessons }: Case) => lessons.find((lesson) => ease(lesson) < 50);
    expect(offenders(cases, hard)).toEqual([]);
  });

  it("names no person, maker or place: capitals inside a sentence are days, feasts, notes and tongues", () => {
    const innocent =
      /^([A-G]|I|U|V|E|Christmas|Easter|English|French|\w+day|January|February|March|April|May|June|July|August|\w+ber)$/;
    const named = ({ story }: Case) =>
      [...story.matchAll(/(?<=[a-z,;:)] )\p{Lu}[\p{L}'’-]*/gu)]
        .map(([word]) => word)
        .find((word) => !innocent.test(word));
    expect(offenders(cases, named)).toEqual([]);
  });

  it("has no root cause that its own findings contradict", () => {
    const contradicted = (kase: Case) => {
      const root = causes.get(rootCauses(kase)[0] ?? "");
      return [...keyFindings(caseFindings(kase, vocabulary), vocabulary)].find(([key, { outcome }]) => {
        const { check, others } = parseFindingKey(key);
        return (others ? root?.others : root?.findings)?.[check]?.[outcome] === "never";
      })?.[0];
    };
    expect(offenders(cases, contradicted)).toEqual([]);
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
  it("tells every outcome in eight notes at least, all of them different and none a phrase that is matched anyway", () => {
    const outcomes = [...checks.values()].flatMap(({ id, outcomes: own }) =>
      own.map((outcome) => ({ ...outcome, id: `${id} ${outcome.id}` })),
    );
    expect(outcomes.filter(({ toldAs }) => toldAs.length < 8).map(({ id }) => id)).toEqual([]);
    const notes = outcomes.flatMap(({ toldAs }) => toldAs.map((note) => note.toLowerCase()));
    expect(notes.filter((note, at) => notes.indexOf(note) !== at)).toEqual([]);
    const phrases = new Set(
      outcomes.flatMap(({ synonyms }) => synonyms.map((phrase) => phrase.toLowerCase())),
    );
    expect(notes.filter((note) => phrases.has(note))).toEqual([]);
  });

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

  it("can reach every cause: told what usually goes with it, it comes among the first three", () => {
    const tellingFindings = ({ findings }: Cause) =>
      Object.entries(findings).flatMap(([check, words]) => {
        const sound = checks.get(check)?.normal;
        const [usual] = Object.entries(words).filter(
          ([id, word]) => id !== sound && atLeastOften.includes(word),
        );
        return usual ? [{ check, found: usual[0] }] : [];
      });
    const outOfReach = (cause: Cause) => {
      const problem = { instrument: cause.families[0], evidence: tellingFindings(cause) };
      const ranked = consult(problemSchema.parse(problem), bench).causes.map(({ id }) => id);
      return !ranked.slice(0, 3).includes(cause.id) && `behind ${ranked.slice(0, 3).join(", ")}`;
    };
    expect(offenders(causes.values(), outOfReach)).toEqual([]);
  });

  it("has met every cause in a case", () => {
    const met = new Set(cases.flatMap((kase) => kase.causes.map(({ cause }) => cause)));
    expect(offenders(causes.values(), ({ id }) => !met.has(id) && "in no case")).toEqual([]);
  });

  it("has outcomes that exclude one another: no way of saying one says another of the same check", () => {
    const shared = ({ outcomes }: Check) => {
      const said = outcomes.flatMap(({ synonyms }) => [
        ...new Set(synonyms.map((text) => text.toLowerCase())),
      ]);
      return said.find((text, at) => said.indexOf(text) !== at);
    };
    expect(offenders(checks.values(), shared)).toEqual([]);
  });

  it("covers the field: so many checks, causes, repairs and cautions at least", () => {
    expect(checks.size).toBeGreaterThanOrEqual(110);
    expect(causes.size).toBeGreaterThanOrEqual(120);
    expect(repairs.size).toBeGreaterThanOrEqual(90);
    expect(vocabulary.cautions.size).toBeGreaterThanOrEqual(18);
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

describe("the estimates of the demo casebook, each job asked about as if it had never happened", () => {
  it("hold at four in five for 75 to 85 in 100 jobs, and at nineteen in twenty for nine in ten or more", () => {
    const { n, p80, p95 } = estimateCoverage(bench);
    expect(n).toBe(cases.length);
    expect(p80).toBeGreaterThanOrEqual(0.75);
    expect(p80).toBeLessThanOrEqual(0.85);
    expect(p95).toBeGreaterThanOrEqual(0.9);
  });
});
