import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { Late, LateMap, partOf } from "@/lib/casebook/lateMap";

/** A late map of some numbers, and those that have been made so far. */
function lateOf(numbers: readonly number[]) {
  const made: number[] = [];
  const make = (number: number) => {
    made.push(number);
    return `made of ${number}`;
  };
  return { made, map: new LateMap(new Map(numbers.map((number) => [number, new Late(() => make(number))]))) };
}

describe("a late map", () => {
  it("makes a value when it is first asked for, once", () => {
    const { made, map } = lateOf([1, 2, 3]);
    expect([map.size, map.has(2), [...map.keys()]]).toEqual([3, true, [1, 2, 3]]);
    expect(made).toEqual([]);
    expect([map.get(2), map.get(2), map.get(4)]).toEqual(["made of 2", "made of 2", undefined]);
    expect(made).toEqual([2]);
    expect([...map.values()]).toEqual(["made of 1", "made of 2", "made of 3"]);
    expect(made).toEqual([2, 1, 3]);
  });

  it("is like any other map, whatever is done to it", () => {
    const step = fc.record({
      what: fc.constantFrom("set", "delete", "clear", "get"),
      key: fc.nat({ max: 6 }),
    });
    fc.assert(
      fc.property(fc.array(step, { maxLength: 20 }), (steps) => {
        const { map } = lateOf([0, 1, 2, 3]);
        const plain = new Map([0, 1, 2, 3].map((number) => [number, `made of ${number}`]));
        for (const { what, key } of steps) {
          if (what === "set") for (const one of [map, plain]) one.set(key, `set to ${key}`);
          else if (what === "delete") expect(map.delete(key)).toBe(plain.delete(key));
          else if (what === "get") expect(map.get(key)).toBe(plain.get(key));
          else if (key === 0) for (const one of [map, plain]) one.clear();
        }
        const told: [number, string][] = [];
        map.forEach((value, key) => {
          told.push([key, value]);
        });
        expect([...map]).toEqual([...plain]);
        expect([...map.entries()]).toEqual([...plain]);
        expect(told).toEqual([...plain]);
        expect(map.size).toBe(plain.size);
      }),
    );
  });

  it("shows a loop what is put in while it runs, and not what is taken out", () => {
    const { map } = lateOf([1, 2]);
    const met: number[] = [];
    for (const [key] of map) {
      met.push(key);
      if (key === 1) {
        map.delete(2);
        map.set(3, "late comer");
      }
    }
    expect(met).toEqual([1, 3]);
  });
});

describe("a part of a map", () => {
  it("has the wanted keys in their order, and nothing is made for it", () => {
    const { made, map } = lateOf([3, 1, 2]);
    const part = partOf(map, (key) => key !== 1);
    expect([[...part.keys()], made]).toEqual([[3, 2], []]);
    expect(part.get(2)).toBe(map.get(2));
    expect(made).toEqual([2]);
  });

  it("is another map: what is done to it the whole does not see", () => {
    for (const whole of [lateOf([1, 2]).map, new Map([[1, "a"]])]) {
      const part = partOf(whole, () => true);
      part.delete(1);
      expect(whole.has(1)).toBe(true);
    }
  });
});
