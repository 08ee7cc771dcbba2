import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { buildBench } from "@/lib/consult/bench/bench";
import { openBench } from "@/lib/consult/bench/openBench";
import { consult } from "@/lib/consult/consult";
import { type ProblemInput, problemSchema } from "@/lib/consult/problem";
import { smallVocabulary } from "../reading/smallVocabulary";
import { fullProblem } from "./fullProblem";
import { smallCasebook, smallCases } from "./smallCasebook";

const small = buildBench(smallVocabulary, smallCasebook(smallCases));
const shipped = openBench({}).bench;
const benches = { "a small casebook": small, "the casebook that ships": shipped } as const;
const ask = (input: ProblemInput, bench = small) => consult(problemSchema.parse(input), bench);
const found = (answer: ReturnType<typeof ask>) =>
  answer.understood.map(({ check, outcome, part }) => `${check} ${outcome}${part ? ` ${part}` : ""}`);
const chance = (answer: ReturnType<typeof ask>, ...ids: string[]) =>
  answer.causes.filter(({ id }) => ids.includes(id)).reduce((sum, { probability }) => sum + probability, 0);

const pieces = fc.constantFrom(
  ..."2nd valve hangs|sticks|dropped|no dents|others run free|maybe lime|bell bent|spring weak|qwfp zxcv|half way down|dents".split(
    "|",
  ),
);
const anyProblem: fc.Arbitrary<ProblemInput> = fc.record(
  {
    instrument: fc.constantFrom("trumpet", "clarinet", "violin", "something"),
    says: fc.array(pieces, { maxLength: 7 }).map((texts) => texts.join(". ")),
    swaps: fc.array(
      fc.record({
        a: fc.constantFrom("piston 1", "piston 2", "piston 3"),
        b: fc.constantFrom("casing 1", "casing 2", "casing 3"),
        result: fc.constantFrom("free", "drags", "sticks"),
      }),
      { maxLength: 4 },
    ),
  },
  { requiredKeys: ["says"] },
);

describe.each(Object.entries(benches))("an answer by %s", (_, bench) => {
  it("has every key, whatever was asked", () => {
    for (const problem of [
      fullProblem,
      { says: "" },
      { says: "qwfp zxcv" },
      { instrument: "violin", says: "squeaks" },
    ]) {
      expect(Object.keys(ask(problem, bench)).filter((key) => key !== "id")).toEqual([
        "instrument",
        "understood",
        "notUnderstood",
        "causes",
        "noneFits",
        "similar",
        "nextChecks",
        "warnings",
        "estimate",
        "gauging",
        "swap",
        "remarks",
      ]);
    }
    expect(ask(fullProblem, bench).id).toBe("any");
    expect(ask({ says: "" }, bench)).not.toHaveProperty("id");
  });

  it("keeps its own rules: probabilities, order, shares", () => {
    fc.assert(
      fc.property(anyProblem, (problem) => {
        const answer = ask(problem, bench);
        const shown = answer.causes.map(({ probability }) => probability);
        const sum = shown.reduce((total, p) => total + p, answer.noneFits);
        expect(sum).toBeLessThanOrEqual(1 + 1e-9);
        // Before the list is cut all causes and none of them add up to 1; a list that is not full was not cut.
        if (shown.length < 8) expect(sum).toBeCloseTo(1, 9);
        expect(Math.min(1, ...shown, answer.noneFits)).toBeGreaterThanOrEqual(0);
        expect(shown).toEqual(shown.toSorted((a, b) => b - a));
        const alike = answer.similar.map(({ similarity }) => similarity);
        expect(alike).toEqual(alike.toSorted((a, b) => b - a));
        for (const { similarity, shares } of answer.similar) {
          expect(similarity).toBeGreaterThanOrEqual(0);
          expect(similarity).toBeLessThanOrEqual(1 + 1e-9);
          expect(shares.reduce((total, { share }) => total + share, 0)).toBeCloseTo(similarity, 9);
        }
        for (const { gainBits, minutes } of answer.nextChecks) {
          expect(gainBits).toBeGreaterThanOrEqual(0);
          expect(minutes).toBeGreaterThan(0);
        }
        for (const cause of answer.causes) {
          for (const { decibans } of cause.for) expect(decibans).toBeGreaterThan(0);
          for (const { decibans } of cause.against) expect(decibans).toBeLessThan(0);
        }
      }),
      { numRuns: 40 },
    );
  });

  it("is the same for the same problem, whatever was asked before", () => {
    fc.assert(
      fc.property(anyProblem, anyProblem, (problem, before) => {
        const first = ask(problem, bench);
        ask(before, bench);
        expect(ask(problem, bench)).toEqual(first);
      }),
      { numRuns: 15 },
    );
  });

  it("does not ask again what was answered", () => {
    const { understood, nextChecks } = ask(
      { instrument: "trumpet", says: "2nd valve hangs, bell bent" },
      bench,
    );
    const done = understood.map(({ check }) => check);
    expect(done).toHaveLength(2);
    for (const { id } of nextChecks) expect(done).not.toContain(id);
  });

  it("knows no cause for an instrument outside the handbook", () => {
    const answer = ask({ instrument: "violin", says: "2nd valve hangs, it was dropped" }, bench);
    expect(answer.instrument).toMatchObject({ id: "violin", outside: true });
    expect(answer.noneFits).toBeGreaterThan(0.95);
    expect(answer.causes).toEqual([]);
    expect(answer.similar).toEqual([]);
    expect(answer.nextChecks).toEqual([]);
    expect(answer.warnings).toEqual([]);
    expect(answer.remarks.join()).toContain("outside this handbook");
    expect(answer.remarks.join()).toContain("covers brass and woodwind");
  });

  it("leaves more room for something else where the instrument is one that nobody knows", () => {
    const says = "2nd valve hangs, it was dropped";
    const known = ask({ instrument: "trumpet", says }, bench).noneFits;
    expect(ask({ instrument: "didgeridoo", says }, bench).noneFits).toBeGreaterThan(2 * known);
  });

  it("does not pretend to understand nonsense", () => {
    for (const says of ["qwfp zxcv blorpf wibble", "", "🎺 🎺 🎺"]) {
      const answer = ask({ says }, bench);
      expect(answer.understood).toEqual([]);
      expect(answer.similar).toEqual([]);
      expect(answer.remarks.join()).toContain("covers brass and woodwind");
      expect(answer.noneFits).toBeGreaterThan(0.85);
      expect(answer.estimate).toBeNull();
    }
    expect(ask({ says: "qwfp zxcv" }, bench).notUnderstood).toEqual(["qwfp zxcv"]);
  });

  it("holds it the likelier that none fits, the more was said that nobody understood", () => {
    const clear = ask({ instrument: "trumpet", says: "2nd valve hangs" }, bench);
    const strange = ask({ instrument: "trumpet", says: "2nd valve hangs. qwfp zxcv. arstd. neio" }, bench);
    expect(strange.noneFits).toBeGreaterThan(clear.noneFits);
  });

  it("says when an instrument is not known to it", () => {
    const answer = ask({ instrument: "thingamajig", says: "2nd valve hangs" }, bench);
    expect(answer.instrument).toBeNull();
    expect(answer.remarks.join()).toContain("'thingamajig'");
  });

  it("takes the instrument from the words where it is not named apart", () => {
    expect(ask({ says: "my trumpet's 2nd valve hangs" }, bench).instrument?.id).toBe("trumpet");
  });
});

describe("what is known of a problem", () => {
  it("says where each finding was read, and shows its labels", () => {
    const says = "2nd valve hangs, maybe dents";
    const { understood } = ask({ instrument: "trumpet", says });
    expect(understood.map(({ span, from }) => span && says.slice(...span) === from)).toEqual([true, true]);
    expect(understood[0]).toMatchObject({
      check: "travel",
      checkLabel: "Valve travel",
      outcomeLabel: "Hangs",
      part: "valve 2",
      source: "says",
      doubtful: false,
    });
    expect(understood[1]?.doubtful).toBe(true);
  });

  it("takes evidence before the text on the same check and part", () => {
    const evidence = [{ check: "travel", found: "free", part: "valve 2" }];
    const answer = ask({ instrument: "trumpet", says: "2nd valve hangs. 3rd valve hangs", evidence });
    expect(found(answer)).toEqual(["travel free valve 2", "travel hangs valve 3"]);
    expect(answer.understood.map(({ source }) => source)).toEqual(["evidence", "says"]);
  });

  it("reports evidence that it does not understand", () => {
    const answer = ask({ evidence: [{ check: "blorpf", found: "wibble" }] });
    expect(answer.notUnderstood).toEqual(["blorpf: wibble"]);
  });

  it("counts evidence said with doubt as doubtful", () => {
    const [finding] = ask({ evidence: [{ check: "casing", found: "maybe dented" }] }).understood;
    expect(finding).toMatchObject({ check: "casing-look", outcome: "dented", doubtful: true });
  });

  it("does not weigh what somebody believes, where anything was seen, and says so", () => {
    const seen = { instrument: "trumpet", says: "2nd valve hangs" };
    const believed = { ...seen, says: "2nd valve hangs, owner is sure casing dented" };
    const answer = ask(believed);
    expect(found(answer)).toEqual(["travel hangs valve 2"]);
    expect(answer.remarks).toContain("Taken as an opinion, and not weighed: 'is sure casing dented'.");
    const stated = ask({ ...seen, says: "2nd valve hangs, casing dented" });
    expect(chance(answer, "dent")).toBeLessThan(chance(stated, "dent"));
    expect(chance(answer, "dent")).toBeLessThanOrEqual(chance(ask(seen), "dent"));
    expect(found(ask({ instrument: "trumpet", says: "owner is sure casing dented" }))).toEqual([
      "casing-look dented casing",
    ]);
  });

  it("leaves out what it is told to leave out, by check or by check and part", () => {
    const says = "2nd valve hangs. 3rd valve hangs. dents";
    const left = (...leaveOut: string[]) => found(ask({ instrument: "trumpet", says, leaveOut }));
    expect(left()).toEqual(["travel hangs valve 2", "travel hangs valve 3", "casing-look dented casing 3"]);
    expect(left("travel valve 2")).toEqual(["travel hangs valve 3", "casing-look dented casing 3"]);
    expect(left("travel", "casing-look casing 3")).toEqual([]);
  });

  it("weighs a finding that was left out as if it had never been said", () => {
    const said = ask({ instrument: "trumpet", says: "2nd valve hangs. dents" });
    const left = ask({ instrument: "trumpet", says: "2nd valve hangs. dents", leaveOut: ["casing-look"] });
    expect(chance(left, "dent")).toBeLessThan(chance(said, "dent"));
  });

  it("gives a doubted finding less weight than a sure one", () => {
    const sure = ask({ instrument: "trumpet", evidence: [{ check: "casing-look", found: "dented" }] });
    const doubted = ask({
      instrument: "trumpet",
      evidence: [{ check: "casing-look", found: "maybe dented" }],
    });
    expect(chance(doubted, "dent")).toBeLessThan(chance(sure, "dent"));
  });

  it("warns of the repair that the likely cause puts in view, with what went wrong last", () => {
    const [warning] = ask({ instrument: "trumpet", says: "2nd valve hangs, it was dropped. dents" }).warnings;
    expect(warning).toMatchObject({
      repair: "press-out",
      done: 2,
      harmed: 2,
      why: "Lacquer marked by the mandrel.",
      harms: [{ what: "Lacquer marked by the mandrel." }, { what: "Wall went out too far." }],
      // 2 of 2: scipy.stats.beta.ppf(.025, 2.5, .5) = .333178 (SciPy, a general-purpose library).
      likeJobs: { among: "like", done: 2, harmed: 2, low: 0.3332, high: 1 },
      odds: "2 of 2 jobs like this one went wrong; fairly sure over 33 in a hundred",
      checkFirst: [{ check: "plugs" }],
    });
  });

  it("warns by the handbook's words of a forceful repair that no case tells of", () => {
    const bare = buildBench(smallVocabulary, smallCasebook([]));
    const says = "2nd valve hangs, it was dropped. dents";
    const { warnings } = consult(problemSchema.parse({ instrument: "trumpet", says }), bare);
    const warning = warnings.find(({ repair }) => repair === "press-out");
    expect(warning).toMatchObject({ done: 0, harmed: 0, likeJobs: null, harms: [] });
    expect(warning?.goesWrong.length).toBeGreaterThan(0);
    expect(warning?.why).toBe(warning?.goesWrong[0]);
  });

  it("asks nothing of the case that it is told to do without", () => {
    const problem = problemSchema.parse({ instrument: "trumpet", says: "2nd valve hangs. dents" });
    const ids = consult(problem, small, { without: "1-1" }).similar.map(({ case: id }) => id);
    expect(ids).not.toContain("1-1");
    expect(ids).toContain("1-4");
    expect(consult(problem, small).similar.map(({ case: id }) => id)).toContain("1-1");
  });
});
