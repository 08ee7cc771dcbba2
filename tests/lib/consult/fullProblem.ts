/** The problem with every key, as the command line's design writes it. */
export const fullProblem = {
  id: "any",
  instrument: "trumpet",
  says: "second valve hangs halfway down",
  evidence: [{ check: "dents", found: "none" }],
  gauges: [
    {
      part: "casing 2",
      depth: "1.2 in",
      passes: [".669 in"],
      stops: [".671 in"],
      reference: { part: "casing 1", passes: [".672 in"], stops: [".673 in"] },
      piston: { part: "piston 2", diameter: ".6675 in", plusMinus: ".0001 in" },
    },
  ],
  diameters: [{ part: "casing 2", depth: "1.2 in", readings: [{ angle: 0, diameter: ".6742 in" }] }],
  swaps: [{ a: "piston 2", b: "casing 1", result: "free" as const, where: "halfway down" }],
};
