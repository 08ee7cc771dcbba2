import fc from "fast-check";
import { expect, it } from "vitest";
import { ExactMean } from "@/lib/similarity/exactMean";

const meanOf = (similarities: readonly number[]) => {
  const mean = new ExactMean();
  for (const similarity of similarities) mean.add(similarity);
  return mean.mean();
};

it("the mean of nothing is undefined, of 0.25 once and 1 three times 0.8125", () => {
  const mean = new ExactMean();
  expect(mean.mean()).toBeUndefined();
  mean.add(0.25);
  mean.add(1, 3);
  expect(mean.mean()).toBe(0.8125);
});

it("the mean is the same to the last bit in any order, where plain sums differ", () => {
  expect(0.1 + 0.2 + 0.3).not.toBe(0.3 + 0.2 + 0.1);
  const similarities = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { minLength: 1, maxLength: 50 });
  fc.assert(
    fc.property(similarities, (list) => {
      expect(meanOf([...list].sort())).toBe(meanOf(list));
      expect(meanOf([...list].reverse())).toBe(meanOf(list));
      const plain = list.reduce((sum, x) => sum + x, 0) / list.length;
      expect(Math.abs((meanOf(list) ?? 0) - plain)).toBeLessThan(1e-14);
    }),
  );
});

it("many at once come to the same as one by one, without the unknown and those that do not count", () => {
  const list = fc.array(fc.oneof(fc.constant(Number.NaN), fc.double({ min: 0, max: 1, noNaN: true })));
  fc.assert(
    fc.property(list, fc.array(fc.constantFrom(0, 1)), fc.nat(30), (similarities, live, rowCount) => {
      const mean = new ExactMean();
      mean.addKnown(Float64Array.from(similarities), Uint8Array.from(live), rowCount);
      const counting = similarities.filter(
        (similarity, row) => row < rowCount && live[row] === 1 && !Number.isNaN(similarity),
      );
      expect(mean.mean()).toBe(meanOf(counting));
    }),
  );
});
