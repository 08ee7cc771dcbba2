import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { faultProbabilities } from "../../../../lib/diagnosis/swaps/faultProbabilities";

const letters = ["a", "b", "c", "d", "e"];
const priorsOf = fc
  .array(fc.double({ min: 0.01, max: 0.99, noNaN: true }), { minLength: 5, maxLength: 5 })
  .map((values) => new Map(letters.map((letter, index) => [letter, values[index] ?? 0.5])));

describe("faultProbabilities", () => {
  it("agrees with adding up every possible state of the parts", () => {
    const diagnosesOf = fc.array(fc.subarray(letters, { minLength: 1 }), { minLength: 1, maxLength: 5 });
    fc.assert(
      fc.property(diagnosesOf, priorsOf, (diagnoses, priors) => {
        let evidence = 0;
        const faulty = new Map(letters.map((letter) => [letter, 0]));
        for (let mask = 0; mask < 32; mask += 1) {
          const broken = letters.filter((_letter, bit) => (mask >> bit) & 1);
          if (!diagnoses.some((diagnosis) => diagnosis.every((part) => broken.includes(part)))) continue;
          const chance = letters.reduce((product, letter) => {
            const prior = priors.get(letter) ?? 0;
            return product * (broken.includes(letter) ? prior : 1 - prior);
          }, 1);
          evidence += chance;
          for (const letter of broken) faulty.set(letter, (faulty.get(letter) ?? 0) + chance);
        }
        const found = faultProbabilities(diagnoses, priors);
        for (const letter of letters)
          expect(found?.get(letter)).toBeCloseTo((faulty.get(letter) ?? 0) / evidence, 12);
      }),
    );
  });

  it("leaves every part at its prior when nothing need be at fault", () => {
    expect(faultProbabilities([[]], new Map([["a", 0.2]]))).toEqual(new Map([["a", 0.2]]));
  });

  it("has no answer when no diagnosis can hold", () => {
    expect(faultProbabilities([["a"]], new Map([["a", 0]]))).toBeUndefined();
    expect(faultProbabilities([], new Map([["a", 0.1]]))).toBeUndefined();
  });

  it("refuses a part without a prior and a prior that is no probability", () => {
    expect(() => faultProbabilities([["a"]], new Map())).toThrow("got none for a");
    expect(() => faultProbabilities([["a"]], new Map([["a", 2]]))).toThrow(
      "the prior of a must be in 0..1; got 2",
    );
  });
});
