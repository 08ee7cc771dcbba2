import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { survivesJson } from "@/lib/casebook/snapshot/survivesJson";

describe("a value that survives JSON", () => {
  it("comes back from it as it was", () => {
    const anything = fc.anything({ withBigInt: true, withDate: true, withSparseArray: false });
    fc.assert(
      fc.property(fc.oneof(fc.jsonValue(), anything), (value) => {
        fc.pre(!(typeof value === "object" && value !== null && hasOddObject(value)));
        if (survivesJson(value)) expect(JSON.parse(JSON.stringify(value))).toStrictEqual(value);
      }),
    );
  });

  it.each([[Number.NaN], [Number.POSITIVE_INFINITY], [-0], [undefined], [1n], [{ a: [undefined] }]])(
    "is not %s",
    (value) => {
      expect(survivesJson(value)).toBe(false);
    },
  );

  it("is whatever else YAML gives", () => {
    expect(survivesJson({ a: [1, -2.5, 0, "x", true, null, { b: {} }] })).toBe(true);
  });
});

/** Dates and objects without a prototype are nothing that YAML's core schema gives. */
const hasOddObject = (value: object): boolean =>
  (!Array.isArray(value) && Object.getPrototypeOf(value) !== Object.prototype) ||
  Object.values(value).some((inner) => typeof inner === "object" && inner !== null && hasOddObject(inner));
