import { describe, expect, it } from "vitest";
import type { z } from "zod";
import { openBench } from "@/lib/consult/bench/openBench";
import { gaugeReadings } from "@/lib/consult/gauge/gaugeReadings";
import { readingsSchema } from "@/lib/consult/gauge/readingsInput";

const { reader } = openBench({}).bench;
const gauge = (input: z.input<typeof readingsSchema>) => gaugeReadings(readingsSchema.parse(input), reader);
const oval = [17.012, 17.018, 17.011, 16.988, 16.979, 16.992].map((mm, index) => ({
  angle: 30 * index,
  diameter: `${mm} mm`,
}));

describe("readings without a case", () => {
  it("come back under the vocabulary's names, and others as they were written", () => {
    const answer = gauge({
      gauges: [{ part: "2nd casing", passes: [".669 in"], stops: [] }],
      swaps: [{ a: "leg A", b: "tube B", result: "drags" }],
    });
    expect(answer.gauges[0]?.part).toBe("casing 2");
    expect(answer.swaps?.suspects.map(({ part }) => part)).toEqual(["leg a", "tube b"]);
  });

  it("give diameters in inches and millimetres with direction, errors and the limit of two points", () => {
    const [section] = gauge({ diameters: [{ part: "casing 2", depth: "1.2 in", readings: oval }] }).diameters;
    expect(section).toMatchObject({
      depthMm: 30.48,
      meanMm: 17,
      amplitudeMm: 0.010109,
      directionDeg: 27.9531,
      standardErrors: { amplitudeMm: 0.000569, directionDeg: 1.613 },
      press: { atDeg: [28, 208] },
    });
    expect(section?.flags.join()).toContain("three-lobed");
  });

  it("give a leak as it would be at playing pressure, in proportion, and against a sound one", () => {
    // 20 ml/min at 1.5 kPa are 40 at 3 kPa, five times 8.
    const { leaks, flags } = gauge({
      leaks: [{ flow: "20 ml/min", at: "15 mbar", sound: "8 ml/min" }, { flow: "20 ml/min" }],
    });
    expect(leaks[0]).toMatchObject({ mlPerMinute: 20, atPa: 1500, atPlayingMlPerMinute: 40, timesSound: 5 });
    expect(leaks[0]?.means[0]).toBe("40 ml/min at 3 kPa, about what a player blows at.");
    expect(leaks[1]).toMatchObject({ mlPerMinute: null, means: [] });
    expect(flags).toEqual(["leak: both flow and pressure"]);
  });

  it("keep the order of the sections, and tell the taper of each bore by its own", () => {
    const at = (part: string, depth: string, mm: number) => ({
      part,
      depth,
      readings: [0, 60, 120].map((angle) => ({ angle, diameter: `${mm} mm` })),
    });
    const { diameters, bores } = gauge({
      diameters: [at("casing 1", "1 in", 17), at("casing 2", "1 in", 16), at("casing 1", "2 in", 17.0254)],
    });
    expect(diameters.map(({ part, meanMm }) => `${part} ${meanMm}`)).toEqual([
      "casing 1 17",
      "casing 2 16",
      "casing 1 17.0254",
    ]);
    expect(bores).toMatchObject([
      { part: "casing 1", depths: 2, changeThou: 1, thouPerInch: 1 },
      { part: "casing 2", depths: 1, changeThou: null },
    ]);
  });

  it("name the one swap that would settle it, from parts that must be there", () => {
    const { swaps } = gauge({
      swaps: [
        { a: "piston 2", b: "casing 1", result: "free" },
        { a: "piston 2", b: "casing 2", result: "sticks" },
      ],
    });
    expect(swaps?.suspects).toContainEqual(
      expect.objectContaining({ part: "casing 2", standing: "suspect" }),
    );
    expect(swaps?.nextSwap).toEqual(["piston 1", "casing 2"]);
  });

  it("flag a pair that contradicts itself, a part in itself, and what is undecided", () => {
    const { swaps } = gauge({
      swaps: [
        { a: "piston 2", b: "casing 1", result: "free" },
        { a: "2nd piston", b: "casing 1", result: "sticks" },
        { a: "piston 3", b: "piston 3", result: "free" },
      ],
    });
    expect(swaps?.contradictions).toEqual(["piston 2 in casing 1 was free and sticks: try it again"]);
    expect(swaps?.flags.join("\n")).toMatch(/no swap: piston 3[\s\S]*contradiction[\s\S]*undecided/);
  });

  it("are findings by the vocabulary's bounds; oval at one depth is oval, round as it may be at another", () => {
    const round = [0, 45, 90, 135].map((angle) => ({ angle, diameter: "17 mm" }));
    const { findings } = gauge({
      diameters: [
        { part: "casing 2", readings: round },
        { part: "casing 2", readings: oval },
        { part: "casing 2", readings: round },
      ],
    });
    expect(findings).toEqual([{ check: "bore-gauge", outcome: "oval", part: "casing 2" }]);
  });

  it("must be some, under names that are known", () => {
    expect(readingsSchema.safeParse({}).success).toBe(false);
    expect(readingsSchema.safeParse({ gages: [] }).success).toBe(false);
    expect(
      readingsSchema.safeParse({ says: "hangs", swaps: [{ a: "x", b: "y", result: "free" }] }).success,
    ).toBe(true);
  });
});
