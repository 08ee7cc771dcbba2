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

/** How often a repair went wrong in jobs like the one in view, or in more of them where those are too few. */
export type LikeJobs = Readonly<{
  done: number;
  harmed: number;
  /** Which jobs were counted: the cases like it, those on instruments of its family, or all. */
  among: "like" | "family" | "all";
  /** The family's label, where its jobs were counted. */
  family: string | null;
  /** The share of such jobs that goes wrong in the long run lies in between nineteen times in twenty, 0..1. */
  low: number;
  high: number;
}>;

export type Warning = Readonly<{
  repair: string;
  label: string;
  riskClass: number;
  /** What went wrong first of `harms`, or else of `goesWrong`. */
  why: string;
  checkFirst: readonly Readonly<{ check: string; label: string; why: string }>[];
  /** Past cases in which this repair was done, and those in which it did harm. */
  done: number;
  harmed: number;
  /** Null where it was done in no case. */
  likeJobs: LikeJobs | null;
  /** The same in plain words. */
  odds: string;
  /** What it did in past cases, those like this one first, then the last first; at most three. */
  harms: readonly Readonly<{ case: string; what: string }>[];
  /** How it goes wrong by the handbook. */
  goesWrong: readonly string[];
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

/** One swap test as it was taken. */
export type SwapTried = Readonly<{
  a: string;
  b: string;
  result: "free" | "drags" | "sticks";
  /** What the result depended on, as far as told: place and way by the outcomes' ids or in words, the turn by its key. */
  where: string | null;
  way: string | null;
  turned: string | null;
  /** The same in words; empty where nothing was told. */
  depended: string;
  /** Read from the text, given as a swap test, or how a valve travels in its own place. */
  source: "says" | "swaps" | "travel";
  /** Start and end of the words in `says`, where they came from there. */
  span?: readonly [number, number];
}>;

export type SwapAnswer = Readonly<{
  tests: readonly SwapTried[];
  suspects: readonly Readonly<{ part: string; standing: "suspect" | "possible" | "cleared" }>[];
  /** Where place, way or turn speaks for one part, a sentence each. */
  splits: readonly string[];
  nextSwap: readonly [string, string] | null;
  contradictions: readonly string[];
}>;

/** Where a way through the plan has come to: what is likeliest then, and the minutes to be expected from there, harm included. */
type PlanReached = Readonly<{
  /** `cause` is null where the causes that were not listed are together the likeliest. */
  likeliest: Readonly<{ cause: string | null; label: string; probability: number }>;
  expectedMinutes: number;
}>;

/** A repair to do; `repair` is null for going through the instrument until the trouble is found. */
type PlanRepairStep = Readonly<{
  repair: string | null;
  label: string;
  minutes: number | null;
  riskClass: number | null;
  /** Chance that it mends, 0..1. */
  chance: number;
}>;

/** One step of a plan: a check with what to do after each outcome, a repair, or the place from which to plan again. */
export type PlanStep = PlanReached &
  (
    | Readonly<{
        kind: "check";
        check: string;
        label: string;
        /** What has to be opened for it, done with it. */
        opens: readonly Readonly<{ check: string; label: string }>[];
        /** Minutes at the bench, opening included. */
        minutes: number;
        riskClass: number;
        /** Adding up to 1, in the check's order. */
        outcomes: readonly Readonly<{
          outcome: string;
          label: string;
          probability: number;
          next: PlanStep;
        }>[];
      }>
    | (Readonly<{ kind: "act" }> & PlanRepairStep)
    | Readonly<{ kind: "later" }>
  );

/** The checks to come and the repairs that they lead to, by expected minutes with harm counted as the minutes that it costs. */
export type PlanAhead = Readonly<{
  next: PlanStep;
  /** What following the plan costs on average, the repair included; no plan costs less than the bound. */
  expectedMinutes: number;
  boundMinutes: number;
  /** What it would cost if the cause were known: the rest is the price of finding out. */
  knownMinutes: number;
  /** No plan is better. */
  exact: boolean;
  /** The best repair to do at once, and the best check to do first: the plan acts where acting costs at most as much. */
  actNow: PlanRepairStep & Readonly<{ expectedMinutes: number }>;
  checkFirst: Readonly<{ check: string; label: string; expectedMinutes: number }> | null;
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
  /** Only where it was asked for; null where nothing that was said bears on a cause. */
  plan?: PlanAhead | null;
  warnings: readonly Warning[];
  estimate: Readonly<{ minutes: Readonly<{ p50: number; p80: number; p95: number }>; cases: number }> | null;
  gauging: readonly (GaugingResult | OvalityResult)[];
  swap: SwapAnswer | null;
  /** What the answer rests on, in plain words, where there is something to say: too few cases, outside the field. */
  remarks: readonly string[];
}>;
