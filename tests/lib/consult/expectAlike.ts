import { expect } from "vitest";

/** Expects two values to be the same in shape and text, with numbers within a tolerance. */
export function expectAlike(one: unknown, other: unknown, tolerance = 1e-9, path = "answer"): void {
  if (typeof one === "number" && typeof other === "number") {
    expect(Math.abs(one - other), `${path}: ${one} and ${other}`).toBeLessThanOrEqual(tolerance);
  } else if (typeof one === "object" && one !== null && typeof other === "object" && other !== null) {
    expect(Object.keys(one), path).toEqual(Object.keys(other));
    for (const key of Object.keys(one))
      expectAlike(Reflect.get(one, key), Reflect.get(other, key), tolerance, `${path}.${key}`);
  } else expect(one, path).toEqual(other);
}
