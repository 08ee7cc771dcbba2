import { nearestTerm } from "./nearestTerm";

/** A short text that tells of a topic, as the terms it has. */
export type ToldText = Readonly<{ topic: string; terms: ReadonlySet<string> }>;

/** A term's texts with what it counts in each, and how telling it is. */
type Postings = Readonly<{ texts: Int32Array; weights: Float64Array; idf: number }>;

/**
 * How sharply closeness counts: a text as good as the same weighs e to this against one with nothing in common. Chosen: see
 * tests/reference/phrases; what is learned of weights makes up for another one.
 */
const sharpness = 8;
/** What a text with nothing in common weighs. */
const far = Math.exp(-sharpness);

/**
 * Tells what a text is about by the texts that are close to it: the density of each topic's texts around it, where closeness
 * is the cosine of the angle between two texts' terms, each counted by how rare it is. A word model asks how often a topic has
 * a word; this asks whether it was ever told with the same words together.
 *
 * Source: kernel density estimate, Parzen 1962; inverse document frequency, Spärck Jones 1972; cosine of texts, Salton,
 * Wong & Yang 1975.
 */
export class NearTexts {
  readonly topics: readonly string[];
  readonly #rowOf: ReadonlyMap<string, number>;
  readonly #terms = new Map<string, Postings>();
  /** The topic's row by the text's number; -1 while it is left out. */
  readonly #rowOfText: Int32Array;
  /** The numbers of the texts with the same topic and terms. */
  readonly #numbersOf = new Map<string, number[]>();
  /** How many texts each topic has. */
  readonly #sizes: Float64Array;
  readonly #rarest: number;
  /** Room for `weigh` to work in: the cosine by the text's number, all 0 between questions, and the numbers that are not. */
  readonly #cosines: Float64Array;
  readonly #close: Int32Array;
  readonly #slips = new Map<string, string | undefined>();

  /** Learns the texts; those of a topic that is not among the topics are passed over. */
  constructor(topics: readonly string[], told: Iterable<ToldText>) {
    this.topics = topics;
    this.#rowOf = new Map(topics.map((topic, row) => [topic, row]));
    const texts = [...told].filter(({ topic, terms }) => this.#rowOf.has(topic) && terms.size > 0);
    this.#rarest = Math.log(1 + texts.length);
    this.#sizes = new Float64Array(topics.length);
    this.#rowOfText = new Int32Array(texts.length);
    this.#cosines = new Float64Array(texts.length);
    this.#close = new Int32Array(texts.length);
    const textsOf = new Map<string, number[]>();
    for (const [number, { topic, terms }] of texts.entries()) {
      const row = this.#rowOf.get(topic) ?? 0;
      this.#rowOfText[number] = row;
      this.#sizes[row] = (this.#sizes[row] ?? 0) + 1;
      const same = nameOf(topic, terms);
      this.#numbersOf.set(same, [...(this.#numbersOf.get(same) ?? []), number]);
      for (const term of terms) {
        const listed = textsOf.get(term);
        if (listed) listed.push(number);
        else textsOf.set(term, [number]);
      }
    }
    const idf = new Map(
      [...textsOf].map(([term, { length }]) => [term, Math.log(1 + texts.length / length)]),
    );
    const lengths = texts.map(({ terms }) => Math.hypot(...[...terms].map((term) => idf.get(term) ?? 0)));
    for (const [term, numbers] of textsOf) {
      const own = idf.get(term) ?? 0;
      const weights = Float64Array.from(numbers, (number) => own / (lengths[number] ?? 1));
      this.#terms.set(term, { texts: Int32Array.from(numbers), weights, idf: own });
    }
  }

  /** Leaves one text out as if nobody had written it, or brings it back; how rare its words are stays as it was. */
  leaveOut({ topic, terms }: ToldText, isOut: boolean): void {
    const row = this.#rowOf.get(topic);
    const numbers = this.#numbersOf.get(nameOf(topic, terms)) ?? [];
    const number = numbers.find((one) => (this.#rowOfText[one] ?? -1) < 0 !== isOut);
    if (row === undefined || number === undefined) return;
    this.#rowOfText[number] = isOut ? -1 : row;
    this.#sizes[row] = (this.#sizes[row] ?? 0) + (isOut ? -1 : 1);
  }

  /**
   * Weighs the topics by how close their texts are; a typing slip counts as the term that it is nearest to.
   *
   * @param possible which topics can be at work at all
   * @returns log of a topic's density around the text over that of all possible ones, by the order of the topics; 0 for a topic
   * that is not possible or has no texts
   */
  weigh(text: Iterable<string>, possible: (topic: string) => boolean): Float64Array {
    const sums = this.#sizes.map((size) => size * far);
    const count = this.#findClose(text);
    for (let at = 0; at < count; at++) {
      const number = this.#close[at] ?? 0;
      const cosine = this.#cosines[number] ?? 0;
      this.#cosines[number] = 0;
      const row = this.#rowOfText[number] ?? -1;
      if (row >= 0) sums[row] = (sums[row] ?? 0) + Math.exp(sharpness * (cosine - 1)) - far;
    }
    const open = this.topics.map((topic, row) => (this.#sizes[row] ?? 0) > 0 && possible(topic));
    let [sum, size] = [0, 0];
    for (const [row, isOpen] of open.entries()) {
      if (!isOpen) continue;
      sum += sums[row] ?? 0;
      size += this.#sizes[row] ?? 0;
    }
    const mean = Math.log(sum / size);
    return sums.map((own, row) => (open[row] ? Math.log(own / (this.#sizes[row] ?? 1)) - mean : 0));
  }

  /**
   * Writes the numbers of the texts that have a term in common with this one into `#close` and their cosines into `#cosines`.
   *
   * @returns how many there are
   */
  #findClose(text: Iterable<string>): number {
    const terms = new Set([...text].map((term) => this.#readingOf(term) ?? term));
    const known = [...terms].map((term) => this.#terms.get(term));
    const length = Math.hypot(...known.map((postings) => postings?.idf ?? this.#rarest));
    let count = 0;
    for (const postings of known) {
      if (!postings) continue;
      const { texts, weights, idf } = postings;
      const own = idf / length;
      for (let at = 0; at < texts.length; at++) {
        const number = texts[at] ?? 0;
        const before = this.#cosines[number] ?? 0;
        if (before === 0) this.#close[count++] = number;
        this.#cosines[number] = before + (weights[at] ?? 0) * own;
      }
    }
    return count;
  }

  #readingOf(term: string): string | undefined {
    if (this.#terms.has(term)) return term;
    if (!this.#slips.has(term)) this.#slips.set(term, nearestTerm(term, this.#terms.keys()));
    return this.#slips.get(term);
  }
}

const nameOf = (topic: string, terms: ReadonlySet<string>) => `${topic} ${[...terms].sort().join(" ")}`;
