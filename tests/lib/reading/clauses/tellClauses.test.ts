import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { tellClauses } from "@/lib/reading/clauses/tellClauses";
import { buildReader } from "@/lib/reading/reader";
import { takeApart } from "@/lib/reading/sentence";
import { splitTokens } from "@/lib/reading/words/token";
import { checkSchema } from "@/lib/vocabulary/check";
import { smallVocabulary } from "../smallVocabulary";

const told = {
  lime: ["chalky scale where the water sits", "hard white skin inside, like in a kettle"],
  dented: ["a ding in the barrel you can feel with a thumbnail", "somebody pushed the wall in"],
};

/** The small vocabulary with two outcomes told in words that none of its phrases has. */
const reader = buildReader({
  ...smallVocabulary,
  checks: new Map(
    [...smallVocabulary.checks].map(([id, check]) => [
      id,
      checkSchema.parse({
        ...check,
        outcomes: check.outcomes.map((outcome) => ({
          ...outcome,
          ...(outcome.id === "lime" || outcome.id === "dented" ? { toldAs: told[outcome.id] } : {}),
        })),
      }),
    ]),
  ),
});
const tell = (text: string, isOpen: (outcome: string) => boolean = () => true) =>
  takeApart(splitTokens(text, reader.words), reader, undefined, () => true).flatMap((sentence) =>
    tellClauses(sentence, reader, new Set(reader.spoken.model.topics.filter(isOpen)), undefined),
  );
const likeliest = (text: string) => tell(text).map(({ outcomes }) => outcomes[0]?.meaning.outcome.id);

describe("tellClauses", () => {
  it("finds what a clause is likeliest to tell of, clause by clause, though no phrase is in it", () => {
    expect(likeliest("white scale like in a kettle, and the wall pushed in by a thumbnail")).toEqual([
      "lime",
      "dented",
    ]);
  });

  it("marks what is said of the siblings", () => {
    expect(tell("dent in casing, other two have dents").map(({ others }) => others)).toEqual([false, true]);
  });

  it("says nothing of words that no outcome was told with, nor of what makes no sense here", () => {
    expect(tell("quick brown foxes")).toEqual([]);
    const elsewhere = tell("white scale like in a kettle", (outcome) => !outcome.startsWith("deposits "));
    const checks = elsewhere.flatMap(({ outcomes }) => outcomes.map(({ meaning }) => meaning.check.id));
    expect(checks).not.toContain("deposits");
  });

  it("gives every clause shares over 0 that add up to 1 at most", () => {
    fc.assert(
      fc.property(
        fc.string({ maxLength: 80 }),
        fc.constantFrom("dents", "white scale", "bell bent, no lime"),
        (noise, said) => {
          for (const { outcomes } of tell(`${said} ${noise}`)) {
            const total = outcomes.reduce((sum, { share }) => sum + share, 0);
            expect(total).toBeGreaterThan(0);
            expect(total).toBeLessThanOrEqual(1);
          }
        },
      ),
    );
  });
});
