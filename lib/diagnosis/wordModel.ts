import { nearestTerm } from "./nearestTerm";

/** What a text says by its words alone. */
export type WordOpinion = Readonly<{
  /** log P(words | topic) / P(words), by the order of the topics; 0 for a topic that is not possible. */
  logs: Float64Array;
  /** Share of the text's terms that no possible topic has ever been told with, 0..1; 1 for a text without terms. */
  strange: number;
}>;

/** A term by the rows of the topics that were told with it, and how much all open ones together were. */
type HeardTerm = Readonly<{ counts: ReadonlyMap<number, number>; all: number }>;

/** What a word model has learned, laid out in arrays: term t has the topics and counts from `starts[t]` to before `starts[t + 1]`. */
export type WordLessons = Readonly<{
  terms: readonly string[];
  starts: Int32Array;
  rows: Int32Array;
  counts: Float64Array;
  /** By row of the topic, how much it was told in all. */
  sizes: Float64Array;
}>;

/** Words that a topic is credited with before its own are heard: how much of the language of all topics is mixed in. Chosen: see `evaluate --casebook`. */
const smoothingWords = 80;
/** One topic that repeats a word does not make it a common one: it counts at most so often in the language of all. Chosen. */
const mostOfOneTopic = 3;
/** Added to what all topics say of a term, so that none is impossible. Chosen. */
const leastWords = 0.1;

/**
 * The language in which each topic is spoken of: counts of terms, so that a text more is a few additions.
 * P(term | topic) = (n + m P(term)) / (N + m): n how often the topic was told with the term, N with any, P(term) over
 * all topics that are possible, m `smoothingWords`.
 * Source: query likelihood with Dirichlet smoothing, Ponte & Croft 1998; Zhai & Lafferty 2001.
 */
export class WordModel {
  readonly topics: readonly string[];
  readonly #rowOf: ReadonlyMap<string, number>;
  /** Term -> row of the topic -> how often. */
  readonly #counts = new Map<string, Map<number, number>>();
  readonly #sizes: Float64Array;
  readonly #slips = new Map<string, string | undefined>();
  /** By row, the sum of n(t) times -ln of how often any topic was told with t; worked out when it is first asked for. */
  #rarities: Float64Array | undefined;

  constructor(topics: readonly string[]) {
    this.topics = topics;
    this.#rowOf = new Map(topics.map((id, row) => [id, row]));
    this.#sizes = new Float64Array(topics.length);
  }

  /**
   * Adds the terms of a text that tells of a topic, or with a `share` below 0 takes them back.
   *
   * @param terms term -> how often, or how much it counts
   * @param share of the blame that the topic has in what the text tells; a topic that the model does not know is passed over
   */
  learn(topic: string, terms: ReadonlyMap<string, number>, share = 1): void {
    const row = this.#rowOf.get(topic);
    if (row === undefined) return;
    for (const [term, count] of terms) {
      let counts = this.#counts.get(term);
      if (counts === undefined) {
        counts = new Map();
        this.#counts.set(term, counts);
        this.#slips.clear();
      }
      this.#countRarity(counts, -1);
      const now = (counts.get(row) ?? 0) + share * count;
      if (now > forgotten) counts.set(row, now);
      else counts.delete(row);
      this.#countRarity(counts, 1);
      if (counts.size === 0) {
        this.#counts.delete(term);
        this.#slips.clear();
      }
      this.#sizes[row] = Math.max(0, (this.#sizes[row] ?? 0) + share * count);
    }
  }

  /** All that was learned so far, to be brought back by `recall`. */
  lessons(): WordLessons {
    const pairs = [...this.#counts.values()].reduce((sum, { size }) => sum + size, 0);
    const starts = new Int32Array(this.#counts.size + 1);
    const rows = new Int32Array(pairs);
    const counts = new Float64Array(pairs);
    let at = 0;
    for (const [number, told] of [...this.#counts.values()].entries()) {
      for (const [row, count] of told) {
        rows[at] = row;
        counts[at] = count;
        at += 1;
      }
      starts[number + 1] = at;
    }
    return { terms: [...this.#counts.keys()], starts, rows, counts, sizes: this.#sizes.slice() };
  }

  /**
   * Puts what another model of the same topics had learned in the place of what this one has.
   *
   * @throws RangeError when the lessons are of another number of topics
   */
  recall({ terms, starts, rows, counts, sizes }: WordLessons): void {
    if (sizes.length !== this.#sizes.length) {
      throw new RangeError(
        `lessons must be of ${this.#sizes.length} topics; got ${sizes.length}; learn anew`,
      );
    }
    this.#counts.clear();
    this.#slips.clear();
    this.#rarities = undefined;
    this.#sizes.set(sizes);
    for (const [number, term] of terms.entries()) {
      const told = new Map<number, number>();
      const end = starts[number + 1] ?? 0;
      for (let at = starts[number] ?? 0; at < end; at += 1) told.set(rows[at] ?? 0, counts[at] ?? 0);
      this.#counts.set(term, told);
    }
  }

  /**
   * Weighs the topics by the words of a text; each term counts once, a typing slip as the term that it is nearest to.
   *
   * @param possible which topics can be at work at all
   */
  weigh(text: Iterable<string>, possible: (topic: string) => boolean): WordOpinion {
    const open = this.topics.map((id) => possible(id));
    const size = this.#sizes.reduce((sum, one, row) => sum + (open[row] ? one : 0), 0);
    const { heard, strange } = this.#hear(text, open);
    // What a topic was not told with counts alike for every term, so only the topics of each term are gone through.
    const logs = this.#sizes.map((own, row) =>
      open[row] ? heard.length * Math.log(smoothingWords / (own + smoothingWords)) : 0,
    );
    for (const { counts, all } of heard) {
      const mixedIn = (smoothingWords * (all + leastWords)) / size;
      for (const [row, count] of counts)
        if (open[row]) logs[row] = (logs[row] ?? 0) + Math.log1p(count / mixedIn);
    }
    return { logs, strange };
  }

  /**
   * How much of a text's words each topic has of its own, each word by how rare it is. It asks for the whole of a long text,
   * where `weigh` takes every word for a piece of evidence by itself. Terms are taken as they stand; see `mend`.
   *
   * @returns sum over the terms of sqrt(I(t) p(t)), by the order of the topics: I(t) = -ln P(t) over all that was ever told, p(t)
   * the term's share in what the topic was told with, counted by I; 0 for a topic that was told with nothing
   * Source: the affinity of two distributions, Bhattacharyya 1943; self-information, Shannon 1948.
   */
  affinity(text: Iterable<string>): Float64Array {
    if (!this.#rarities) {
      this.#rarities = new Float64Array(this.topics.length);
      for (const counts of this.#counts.values()) this.#countRarity(counts, 1);
    }
    const logAll = Math.log(sum(this.#sizes));
    const sizes = this.#rarities.map((rarity, row) => rarity + (this.#sizes[row] ?? 0) * logAll);
    const shared = new Float64Array(this.topics.length);
    for (const term of new Set(text)) {
      const counts = this.#counts.get(term);
      if (!counts) continue;
      const information = logAll - Math.log(sum(counts.values()));
      for (const [row, count] of counts) shared[row] = (shared[row] ?? 0) + information * Math.sqrt(count);
    }
    return shared.map((one, row) => {
      const size = sizes[row] ?? 0;
      return size > 0 ? one / Math.sqrt(size) : 0;
    });
  }

  /** Whether any topic was told with a term. */
  has(term: string): boolean {
    return this.#counts.has(term);
  }

  /** The term that is probably meant: itself where a topic was told with it, else the nearest that one was, else itself. */
  mend(term: string): string {
    return this.#readingOf(term) ?? term;
  }

  /** Adds what a term's counts make up of `#rarities`, or with -1 takes it off: so a lesson need not go through all terms. */
  #countRarity(counts: ReadonlyMap<number, number>, sign: 1 | -1): void {
    if (!this.#rarities) return;
    const log = Math.log(sum(counts.values()));
    for (const [row, count] of counts) this.#rarities[row] = (this.#rarities[row] ?? 0) - sign * count * log;
  }

  /** The `strange` of `weigh` by itself, without weighing. */
  strangeShare(text: Iterable<string>, possible: (topic: string) => boolean): number {
    const open = this.topics.map((id) => possible(id));
    return this.#hear(text, open).strange;
  }

  /** The terms that an open topic was told with, each once, and the share of the text's that none was. */
  #hear(
    text: Iterable<string>,
    open: readonly boolean[],
  ): Readonly<{ heard: readonly HeardTerm[]; strange: number }> {
    const terms = new Set(text);
    const read = new Set<string>();
    const heard: HeardTerm[] = [];
    let strange = 0;
    for (const spoken of terms) {
      const term = this.#readingOf(spoken);
      const counts = term === undefined ? undefined : this.#counts.get(term);
      let all = 0;
      for (const [row, count] of counts ?? []) if (open[row]) all += Math.min(count, mostOfOneTopic);
      if (term === undefined || counts === undefined || all === 0) strange += 1;
      else if (!read.has(term)) {
        read.add(term);
        heard.push({ counts, all });
      }
    }
    return { heard, strange: terms.size === 0 ? 1 : strange / terms.size };
  }

  #readingOf(term: string): string | undefined {
    if (this.#counts.has(term)) return term;
    if (!this.#slips.has(term)) this.#slips.set(term, nearestTerm(term, this.#counts.keys()));
    return this.#slips.get(term);
  }
}

function sum(numbers: Iterable<number>): number {
  let total = 0;
  for (const number of numbers) total += number;
  return total;
}

/** What is left of a count that was taken back, for rounding. */
const forgotten = 1e-9;
