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
const handbookJobs = 6;

/**
 * Prior and likelihoods of all causes, as counts, so that a job more is a few additions.
 * P(outcome | cause) = (a h + n) / (a + N): h the handbook's probability, n and N the jobs with this cause in which the
 * finding had this outcome, or was looked at; a the handbook's weight in jobs.
 * Source: Dirichlet smoothing, e.g. Gelman et al., Bayesian Data Analysis, section 3.4.
 */
export class CauseModel {
  readonly causes: readonly string[];
  readonly kinds: readonly FindingKind[];
  readonly #causeAt: ReadonlyMap<string, number>;
  readonly #kindAt: ReadonlyMap<string, number>;
  /** First column of each kind. */
  readonly #column: readonly number[];
  readonly #width: number;
  /** Handbook probabilities and counts, one row a cause, one column an outcome of a kind. */
  readonly #handbook: Float64Array;
  readonly #counts: Float64Array;
  /** Jobs in which a kind was looked at, one row a cause, one column a kind. */
  readonly #looked: Float64Array;
  readonly #jobs: Float64Array;

  constructor(causes: readonly CausePrior[], kinds: readonly FindingKind[]) {
    this.causes = causes.map(({ id }) => id);
    this.kinds = kinds;
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
    this.#handbook = new Float64Array(causes.length * width);
    this.#counts = new Float64Array(causes.length * width);
    this.#looked = new Float64Array(causes.length * kinds.length);
    this.#jobs = Float64Array.from(causes, ({ jobs }) => jobs);
    for (const [row, { tellTales }] of causes.entries()) {
      for (const [at, { key, outcomes, background }] of kinds.entries()) {
        const probabilities = spreadOutcomes(outcomes, tellTales.get(key) ?? new Map(), background);
        this.#handbook.set(probabilities, row * width + (column[at] ?? 0));
      }
    }
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
        const cell = row * this.#width + (this.#column[at] ?? 0) + offset;
        this.#counts[cell] = (this.#counts[cell] ?? 0) + sign * share;
        const looked = row * this.kinds.length + at;
        this.#looked[looked] = (this.#looked[looked] ?? 0) + sign * share;
      }
    }
  }

  /** Whether the model knows this finding. */
  knows(key: string): boolean {
    return this.#kindAt.has(key);
  }

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
    const offset = at === undefined ? -1 : (this.kinds[at]?.outcomes.indexOf(outcome) ?? -1);
    if (at === undefined || offset < 0) return undefined;
    const cell = (this.#column[at] ?? 0) + offset;
    return Float64Array.from(this.causes, (_, row) => {
      const looked = this.#looked[row * this.kinds.length + at] ?? 0;
      const count = this.#counts[row * this.#width + cell] ?? 0;
      const handbook = this.#handbook[row * this.#width + cell] ?? 0;
      return (handbookJobs * handbook + count) / (handbookJobs + looked);
    });
  }
}
