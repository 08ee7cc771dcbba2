import { describe, expect, it } from "vitest";
import { betaQuantile } from "../../lib/estimate/betaQuantile";
import { jeffreysInterval } from "../../lib/estimate/jeffreysInterval";
import betaQuantiles from "./betaQuantiles.json";

describe("rates", () => {
  it("3 of 10 at 95 % has the Jeffreys interval .0926946 to .6058183 (Brown, Cai & DasGupta 2001)", () => {
    const { low, high } = jeffreysInterval(3, 10);
    expect(low).toBeCloseTo(0.0926946, 7);
    expect(high).toBeCloseTo(0.6058183, 7);
  });

  it("3 of 10 at 95 % has the Clopper-Pearson interval .0667395 to .6524529 from the same quantiles", () => {
    expect(betaQuantile(0.025, 3, 8)).toBeCloseTo(0.0667395, 7);
    expect(betaQuantile(0.975, 4, 7)).toBeCloseTo(0.6524529, 7);
  });

  it.each(betaQuantiles)(
    "the beta quantile at $p for $a, $b is $x within 1e-10 (betaQuantiles.py)",
    ({ p, a, b, x }) => {
      expect(Math.abs(betaQuantile(p, a, b) - x)).toBeLessThan(1e-10);
    },
  );
});
