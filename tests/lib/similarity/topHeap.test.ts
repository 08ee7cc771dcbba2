import fc from "fast-check";
import { expect, it } from "vitest";
import { TopHeap } from "@/lib/similarity/topHeap";

it("the heap keeps exactly the first k of the order, first to last", () => {
  fc.assert(
    fc.property(fc.uniqueArray(fc.integer()), fc.integer({ min: 1, max: 12 }), (numbers, k) => {
      const heap = new TopHeap(k, (a, b) => a > b);
      for (const number of numbers) heap.offer(number);
      const first = [...numbers].sort((a, b) => b - a).slice(0, k);
      expect(heap.sorted()).toEqual(first);
      expect(heap.last).toBe(numbers.length < k ? undefined : first[k - 1]);
    }),
  );
});
