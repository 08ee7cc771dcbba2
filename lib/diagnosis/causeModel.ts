import { spreadOutcomes } from "./spreadOutcomes";

/** Something that can be found out: its outcomes and how likely each is where nothing has to do with it. */
export type FindingKind = Readonly<{
  key: string;
  outcomes: readonly string[];
  background: readonly number[];
}>;

/** What is known of a cause before any case: how common it is, in jobs, and what it makes likely. */
export type CausePrior = Readonly<{
  id: string;
  /** Pseudo-count of jobs: only the ratios between causes matter. */
  jobs: number;
  /** Finding key -> outcome -> probability given the cause; what is not told is filled up. */
  tellTales: ReadonlyMap<string, ReadonlyMap<string, number>>;
}>;

/** What a finished job teaches: its causes with their share of the blame (adding up to at most 1) and its findings. */
export type Lesson = Readonly<{
  causes: readonly Readonly<{ id: string; share: number }>[];
  findings: ReadonlyMap<string, string>;
}>;

/** Weight of the handbook's word against the cases, in jobs. Chosen: see `evaluate --casebook`. */
const handbookJobs = 10;
/** Weight of the stated background against what all jobs together show, in jobs. Chosen. */
const backgroundJobs = 60;
/** Share of the handbook's words that is taken back toward the background: words err, and no word may rule out a cause. Chosen. */
const wordsErr = 0.1;

/**
 * Prior and likelihoods of all causes, as counts, so that a job more is a few additions.
 * P(outcome | cause) = (a h + n) / (a + N): h the handbook's probability, n and N the jobs with this cause in which the
 * finding had this outcome, or was looked at; a the handbook's weight in jobs. What the handbook leaves open follows the
 * background: how the finding falls over all jobs.
 * Source: Dirichlet smoothing, e.g. Gelman et al., Bayesian Data Analysis, section 3.4.
 */
export class CauseModel {
  readonly causes: readonly string[];
  readonly kinds: readonly FindingKind[];
  readonly #priors: readonly CausePrior[];
  readonly #causeAt: ReadonlyMap<string, number>;
  readonly #kindAt: ReadonlyMap<string, number>;
  /** First column of each kind. */
  readonly #column: readonly number[];
  readonly #width: number;
  /** Jobs with a finding, one row a cause, one column an outcome of a kind; and over all causes. */
  readonly #counts: Float64Array;
  readonly #allCounts: Float64Array;
  readonly #jobs: Float64Array;
  /** Likelihoods worked out since the last lesson, by key. */
  readonly #remembered = new Map<string, readonly Float64Array[]>();

  constructor(causes: readonly CausePrior[], kinds: readonly FindingKind[]) {
    this.causes = causes.map(({ id }) => id);
    this.kinds = kinds;
    this.#priors = causes;
    this.#causeAt = new Map(this.causes.map((id, at) => [id, at]));
    this.#kindAt = new Map(kinds.map(({ key }, at) => [key, at]));
    const column: number[] = [];
    let width = 0;
    for (const { outcomes } of kinds) {
      column.push(width);
      width += outcomes.length;
    }
    this.#column = column;
    this.#width = width;
    this.#counts = new Float64Array(causes.length * width);
    this.#allCounts = new Float64Array(width);
    this.#jobs = Float64Array.from(causes, ({ jobs }) => jobs);
  }

  /** Adds a job's lesson, or with `sign` -1 takes it back. Causes, keys and outcomes that the model does not know are passed over. */
  learn({ causes, findings }: Lesson, sign: 1 | -1 = 1): void {
    for (const { id, share } of causes) {
      const row = this.#causeAt.get(id);
      if (row === undefined) continue;
      this.#jobs[row] = (this.#jobs[row] ?? 0) + sign * share;
      for (const [key, outcome] of findings) {
        const at = this.#kindAt.get(key);
        const offset = at === undefined ? -1 : (this.kinds[at]?.outcomes.indexOf(outcome) ?? -1);
        if (at === undefined || offset < 0) continue;
        const column = (this.#column[at] ?? 0) + offset;
        const cell = row * this.#width + column;
        this.#counts[cell] = (this.#counts[cell] ?? 0) + sign * share;
        this.#allCounts[column] = (this.#allCounts[column] ?? 0) + sign * share;
        this.#remembered.delete(key);
      }
    }
  }

  /** All that was learned so far, to be brought back by `recall`; the arrays are the model's own. */
  lessons(): readonly Float64Array[] {
    return [this.#jobs, this.#allCounts, this.#counts];
  }

  /**
   * Puts what another model of the same causes and kinds had learned in the place of what this one has.
   *
   * @throws RangeError when the lessons are of other causes or kinds, as far as their number tells
   */
  recall(lessons: readonly Float64Array[]): void {
    for (const [at, own] of this.lessons().entries()) {
      const other = lessons[at];
      if (other?.length !== own.length) {
        throw new RangeError(`lessons must hold ${own.length} counts; got ${other?.length}; learn anew`);
      }
      own.set(other);
    }
    this.#remembered.clear();
  }

  /** The kind of finding under a key; undefined where the model does not know it. */
  kindOf(key: string): FindingKind | undefined {
    const at = this.#kindAt.get(key);
    return at === undefined ? undefined : this.kinds[at];
  }

  /** Jobs with this cause, handbook's pseudo-count included; by the order of `causes`. */
  jobsOf(row: number): number {
    return this.#jobs[row] ?? 0;
  }

  /**
   * P(outcome | cause) for every cause, in their order, each over 0.
   *
   * @returns undefined for a key or outcome that the model does not know
   */
  likelihoods(key: string, outcome: string): Float64Array | undefined {
    const at = this.#kindAt.get(key);
    const kind = at === undefined ? undefined : this.kinds[at];
    if (at === undefined || kind === undefined) return undefined;
    let columns = this.#remembered.get(key);
    if (columns === undefined) {
      columns = this.#workOut(at, kind);
      this.#remembered.set(key, columns);
    }
    return columns[kind.outcomes.indexOf(outcome)];
  }

  /** One array an outcome, one entry a cause. */
  #workOut(at: number, { key, outcomes, background: stated }: FindingKind): Float64Array[] {
    const first = this.#column[at] ?? 0;
    const all = outcomes.map((_, offset) => this.#allCounts[first + offset] ?? 0);
    const background = blend(stated, backgroundJobs, all);
    const columns = outcomes.map(() => new Float64Array(this.causes.length));
    const handbookSays = (told: ReadonlyMap<string, number>) =>
      spreadOutcomes(outcomes, told, background).map(
        (p, offset) => (1 - wordsErr) * p + wordsErr * (background[offset] ?? 0),
      );
    // Most causes have nothing to do with a check: what is said of one of them is said of all.
    const nothingTold = handbookSays(new Map());
    for (const [row, { tellTales }] of this.#priors.entries()) {
      const told = tellTales.get(key);
      const handbook = told === undefined ? nothingTold : handbookSays(told);
      const own = outcomes.map((_, offset) => this.#counts[row * this.#width + first + offset] ?? 0);
      for (const [offset, p] of blend(handbook, handbookJobs, own).entries()) {
        const column = columns[offset];
        if (column) column[row] = p;
      }
    }
    return columns;
  }
}

/** (weight prior + counts) / (weight + all counts): probabilities after some jobs. */
function blend(prior: readonly number[], weight: number, counts: readonly number[]): number[] {
  const total = weight + counts.reduce((sum, count) => sum + count, 0);
  return prior.map((p, at) => (weight * p + (counts[at] ?? 0)) / total);
}
