/** One thing that was understood: a check and what was found, on which part, and from which words or reading. */
export type UnderstoodFinding = Readonly<{
  check: string;
  outcome: string;
  /** `valve 3`, `other valve`, or null where no part was named. */
  part: string | null;
  /** The technician's words, or the reading that it was taken from. */
  from: string;
  /** Labels to show: "How the valve travels", "hangs". */
  checkLabel: string;
  outcomeLabel: string;
  /** Said not to be so ("no dents"). */
  absent: boolean;
  /** Said with doubt ("might be"). */
  doubtful: boolean;
  source: "says" | "evidence" | "gauges" | "diameters" | "swaps";
  /** Start and end of the words in `says`, where they came from there. */
  span?: readonly [number, number];
}>;

/** What speaks for or against a cause: the finding in words, and its weight of evidence in decibans. */
export type Reason = Readonly<{ check: string; outcome: string; words: string; decibans: number }>;

export type LikelyCause = Readonly<{
  id: string;
  label: string;
  /** 0..1; with `noneFits` all causes add up to 1 before the list is cut. */
  probability: number;
  for: readonly Reason[];
  against: readonly Reason[];
  /** Ids of past cases with this root cause, most alike first. */
  cases: readonly string[];
}>;

/** One line of a like case's explanation; the shares of a case add up to its similarity. */
export type Share = Readonly<{
  attribute: string;
  label: string;
  verdict: "agrees" | "near" | "differs" | "unknown";
  share: number;
  here: string;
  there: string;
}>;

export type SimilarCase = Readonly<{
  case: string;
  title: string;
  instrument: string;
  similarity: number;
  shares: readonly Share[];
  causes: readonly Readonly<{ cause: string; label: string; role: string }>[];
  lessons: readonly string[];
}>;

export type NextCheck = Readonly<{
  id: string;
  label: string;
  question: string;
  minutes: number;
  riskClass: number;
  gainBits: number;
  /** Causes that its outcomes would tell apart, in words. */
  tells: string;
}>;

export type Warning = Readonly<{
  repair: string;
  label: string;
  riskClass: number;
  why: string;
  checkFirst: readonly Readonly<{ check: string; label: string; why: string }>[];
  /** Past cases in which this repair was done, and those in which it did harm. */
  done: number;
  harmed: number;
  cautions: readonly Readonly<{ id: string; label: string }>[];
}>;

export type GaugingResult = Readonly<{
  part: string;
  lowIn: number | null;
  highIn: number | null;
  lowMm: number | null;
  highMm: number | null;
  /** How much tighter than the reference, in thousandths of an inch; null where nothing bounds it. */
  reductionThou: Readonly<{ low: number; high: number | null }> | null;
  clearanceThou: Readonly<{ low: number | null; high: number | null; verdict: string }> | null;
  flags: readonly string[];
}>;

export type OvalityResult = Readonly<{
  part: string;
  meanMm: number | null;
  /** Largest less smallest diameter of the fitted oval, thousandths of an inch. */
  ovalityThou: number | null;
  /** Direction of the largest diameter, degrees. */
  directionDeg: number | null;
  flags: readonly string[];
}>;

export type SwapAnswer = Readonly<{
  suspects: readonly Readonly<{ part: string; standing: "suspect" | "possible" | "cleared" }>[];
  nextSwap: readonly [string, string] | null;
  contradictions: readonly string[];
}>;

/** The bench's whole answer to one problem. */
export type Answer = Readonly<{
  id?: string;
  instrument: Readonly<{ id: string; label: string; outside: boolean }> | null;
  understood: readonly UnderstoodFinding[];
  notUnderstood: readonly string[];
  causes: readonly LikelyCause[];
  noneFits: number;
  similar: readonly SimilarCase[];
  nextChecks: readonly NextCheck[];
  warnings: readonly Warning[];
  estimate: Readonly<{ minutes: Readonly<{ p50: number; p80: number; p95: number }>; cases: number }> | null;
  gauging: readonly (GaugingResult | OvalityResult)[];
  swap: SwapAnswer | null;
  /** What the answer rests on, in plain words, where there is something to say: too few cases, outside the field. */
  remarks: readonly string[];
}>;
