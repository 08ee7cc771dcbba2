import { describe, expect, it } from "vitest";
import { phraseSchema, scorePhrases } from "@/lib/evaluation/scorePhrases";
import { smallReader } from "../reading/smallVocabulary";

const phrase = (says: string, means: string[], also: string[] = []) => {
  const meant = (names: string[]) =>
    names.map((name) => {
      const [check, outcome] = name.split(": ");
      return { check, outcome };
    });
  return phraseSchema.parse({ says, instrument: "trumpet", means: meant(means), also: meant(also) });
};

describe("scorePhrases", () => {
  it("counts right, missed and wrong findings over all phrases", () => {
    const score = scorePhrases(
      [
        phrase("2nd valve hangs", ["travel: hangs"]),
        phrase("lime", ["deposits: lime", "knock: dropped"]),
        phrase("no dents", ["bell-look: straight"]),
      ],
      smallReader,
    );
    expect(score).toMatchObject({
      phrases: 3,
      right: 2,
      missed: 2,
      wrong: 1,
      precision: 0.6667,
      recall: 0.5,
    });
    expect(score.misread.map(({ says }) => says)).toEqual(["lime", "no dents"]);
    expect(score.misread[1]).toMatchObject({
      missed: ["bell-look: straight"],
      wrong: ["casing-look: sound"],
    });
  });

  it("holds nothing against a reading that may be taken as well", () => {
    const also = phrase("2nd valve hangs, it was dropped", ["travel: hangs"], ["knock: dropped"]);
    expect(scorePhrases([also], smallReader)).toMatchObject({ right: 1, wrong: 0, missed: 0, precision: 1 });
  });

  it("asks for nothing where there is nothing", () => {
    expect(scorePhrases([], smallReader)).toMatchObject({ phrases: 0, precision: 1, recall: 1 });
  });
});
