import type { SwapSuspect } from "../../diagnosis/swaps/readSwaps";

/** An open or closed interval; null where nothing bounds it. */
export type Interval = Readonly<{ low: number | null; high: number | null }>;

/** What plugs in one bore came to. Sizes: at least low, under high. */
export type GaugedBore = Readonly<{
  part: string;
  depthIn: number | null;
  depthMm: number | null;
  lowIn: number | null;
  highIn: number | null;
  lowMm: number | null;
  highMm: number | null;
  reference:
    | (Readonly<{ part: string | null; lowIn: number | null; highIn: number | null }> &
        Readonly<{ lowMm: number | null; highMm: number | null }>)
    | null;
  /** By how much it is tighter than its reference: over low, under high. Null without a reference. */
  reductionThou: Interval | null;
  reductionMm: Interval | null;
  reduction: "sure-reduced" | "sure-larger" | "undecided" | null;
  /** Bore less piston, diametral: negative is interference. Null without a piston. */
  clearanceThou: (Interval & Readonly<{ verdict: string }>) | null;
  clearanceMm: Interval | null;
  /** ISO 286 classes that the clearance lies within, or may be; empty where none can be named. */
  fit: Readonly<{ sure: boolean; names: readonly string[]; why?: string }> | null;
  /** Air leaked as a multiple of a good valve's. */
  leak: Readonly<{ low: number; high: number | null; goodClearanceThou: number }> | null;
  /** What it means, a sentence each. */
  means: readonly string[];
  flags: readonly string[];
}>;

/** What the diameters of one depth came to. */
export type GaugedSection = Readonly<{
  part: string;
  depthIn: number | null;
  depthMm: number | null;
  readings: number;
  meanIn: number | null;
  meanMm: number | null;
  /** Largest less smallest diameter of the fitted oval: four times the amplitude. */
  ovalityThou: number | null;
  ovalityMm: number | null;
  amplitudeMm: number | null;
  /** Direction of the largest diameter, 0 to under 180 degrees. */
  directionDeg: number | null;
  standardErrors: Readonly<{
    meanMm: number;
    ovalityThou: number;
    amplitudeMm: number;
    directionDeg: number | null;
  }> | null;
  /** The two ends to press on; null where no oval is shown. `chance`: that a round bore shows as much. */
  press: Readonly<{
    atDeg: readonly [number, number];
    plusMinusDeg: number | null;
    chance: number | null;
  }> | null;
  /** The reading that no oval explains; null where none stands out or too few tell. */
  dent: Readonly<{
    kind: "dent" | "high";
    angleDeg: number;
    residualThou: number;
    standardErrorThou: number;
    /** The oval through the other readings. */
    besideOvalityThou: number | null;
    besideDirectionDeg: number | null;
  }> | null;
  /** Reading less fitted oval, in the order of the readings that counted. */
  residualsThou: readonly number[];
  means: readonly string[];
  flags: readonly string[];
}>;

/** One bore along its depth. */
export type GaugedTaper = Readonly<{
  part: string;
  depths: number;
  /** From the shallowest depth to the deepest; negative narrows. Null with fewer than two depths. */
  changeThou: number | null;
  standardErrorThou: number | null;
  thouPerInch: number | null;
  means: readonly string[];
}>;

/** How two legs of a slide stand to one another; null where fewer than two places could be read. */
export type GaugedLegs = Readonly<{
  part: string;
  /** How much wider the far end stands than the near one; negative is pinched. */
  splayThou: Interval | null;
  splayMm: Interval | null;
  angleDeg: number | null;
  means: readonly string[];
  flags: readonly string[];
}>;

/** How much air leaks; null where it could not be counted. */
export type GaugedLeak = Readonly<{
  mlPerMinute: number | null;
  /** The pressure at which it was read. */
  atPa: number | null;
  /** At the pressure at which leaks compare; see `playingPa`. */
  atPlayingMlPerMinute: number | null;
  /** As a multiple of a sound one's. */
  timesSound: number | null;
  means: readonly string[];
  flags: readonly string[];
}>;

/** What the swap tests say. */
export type GaugedSwaps = Readonly<{
  suspects: readonly Readonly<{
    part: string;
    standing: SwapSuspect["standing"];
    freeIn: readonly string[];
    stuckIn: readonly string[];
  }>[];
  /** Smallest sets of parts that explain every pair that bound, likeliest first. */
  diagnoses: readonly (readonly string[])[];
  /** The one further swap that would tell most. */
  nextSwap: readonly [string, string] | null;
  /** Pairs that do not suit each other though each ran free elsewhere. */
  unsuited: readonly (readonly [string, string])[];
  contradictions: readonly string[];
  /** Where place, way or turn speaks for one part, a sentence each. */
  splits: readonly string[];
  means: readonly string[];
  flags: readonly string[];
}>;

/** Readings come to numbers, words and flags; no case, no cause. */
export type GaugeAnswer = Readonly<{
  id?: string;
  gauges: readonly GaugedBore[];
  diameters: readonly GaugedSection[];
  /** One for each bore of `diameters`. */
  bores: readonly GaugedTaper[];
  swaps: GaugedSwaps | null;
  legs: readonly GaugedLegs[];
  leaks: readonly GaugedLeak[];
  /** Findings that the readings answer, by the vocabulary's bounds; on parts that it knows. */
  findings: readonly Readonly<{ check: string; outcome: string; part: string }>[];
  /** Every flag above, with the part that it is about. */
  flags: readonly string[];
}>;
