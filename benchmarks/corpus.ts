import type { Case } from "@/lib/casebook/caseFile";
import { readCase } from "@/lib/casebook/readCase";
import { writeCase } from "@/lib/casebook/writeCase";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import { drawJob } from "./corpusJob";
import { writeWords } from "./corpusWords";
import { type Random, seedRandom } from "./random";

/** Which cases: how many, from which seed, and from which running number on (default 1). */
export type CorpusOptions = Readonly<{ seed: number; count: number; firstNumber?: number }>;
export type CorpusFile = Readonly<{ file: string; text: string }>;

/** Syllables of made-up makers: 216 names, of which none is meant to be anybody's. */
const syllables = [
  ["Tar", "Ost", "Brem", "Quil", "Wes", "Hol"],
  ["ran", "ler", "dow", "mer", "tic", "vash"],
  ["t", "ford", "ow", "er", "ley", "ing"],
] as const;
const days = { first: Date.UTC(2015, 0, 5), span: 3800, longestJob: 14 } as const;
const dayMs = 86_400_000;
const pricePerMinute = 1.2;
/** One job in so many is one in which the repair did harm. Chosen. */
const jobsAHarm = 40;

/**
 * Writes case files such as a shop would have, out of the vocabulary's own words. The same seed gives the same bytes,
 * and fewer cases are the beginning of more.
 *
 * @returns one file after another, drawn only when asked for
 */
export function* writeCorpus(
  vocabulary: Vocabulary,
  { seed, count, firstNumber = 1 }: CorpusOptions,
): Generator<CorpusFile> {
  const random = seedRandom(seed);
  for (let number = firstNumber; number < firstNumber + count; number += 1) {
    yield writeOne(number, vocabulary, random);
  }
}

/**
 * Reads a corpus back without a disk between.
 *
 * @throws RangeError when a case breaks the rules of the casebook: the corpus and the vocabulary do not fit
 */
export function* readCorpus(vocabulary: Vocabulary, options: CorpusOptions): Generator<Case> {
  for (const { file, text } of writeCorpus(vocabulary, options)) {
    const { case: kase, problems } = readCase(text, file, vocabulary);
    if (!kase) {
      throw new RangeError(
        `a made-up case must be sound; got ${JSON.stringify(problems[0])}; mend corpus.ts`,
      );
    }
    yield kase;
  }
}

function writeOne(number: number, vocabulary: Vocabulary, random: Random): CorpusFile {
  const job = drawJob(vocabulary, random);
  const words = writeWords(job, vocabulary, random);
  const received = days.first + random.whole(0, days.span) * dayMs;
  const id = `${new Date(received).getUTCFullYear() % 100}-${String(number).padStart(6, "0")}`;
  const path = [...job.checks, job.repair];
  const minutes = path.reduce((sum, step) => sum + step.minutes, 0);
  const part = job.repair.part;
  const usual = vocabulary.repairs.get(job.repair.repair)?.minutes.usual ?? job.repair.minutes;
  const quoted = minutes - job.repair.minutes + usual;
  const didHarm = number % jobsAHarm === 0;
  const fields = {
    id,
    title: words.title,
    status: "closed",
    instrument: job.instrument.id,
    maker: syllables.map((row) => random.pick(row) ?? "").join(""),
    model: `${random.pick(["B", "K", "M", "T", "V"]) ?? "B"}${random.whole(1, 400)}`,
    received: dayOf(received),
    closed: dayOf(received + random.whole(0, days.longestJob) * dayMs),
    complaint: words.complaint,
    arrival: words.arrival,
    path,
    causes: [{ cause: job.cause.id, ...(part ? { part } : {}), role: "root" }],
    outcome: random.chance(0.9) ? "fixed" : "improved",
    minutes,
    quoted: { minutes: quoted, price: Math.round(quoted * pricePerMinute * 100) / 100 },
    charge: Math.round(minutes * pricePerMinute * 100) / 100,
    harms: didHarm
      ? [{ repair: job.repair.repair, what: "It took harm.", minutes: usual, paidBy: "shop" }]
      : [],
    lessons: words.lessons,
  };
  return { file: `${id}.md`, text: writeCase(fields, words.story) };
}

const dayOf = (time: number) => new Date(time).toISOString().slice(0, 10);
