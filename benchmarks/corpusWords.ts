import { parsePartRef } from "@/lib/casebook/partRef";
import type { CheckStep } from "@/lib/casebook/step";
import type { Vocabulary } from "@/lib/vocabulary/vocabulary";
import type { CorpusJob } from "./corpusJob";
import type { Random } from "./random";

/** What a case says in words: built of the vocabulary's labels, synonyms and prose. */
export type CorpusWords = Readonly<{
  title: string;
  complaint: string;
  arrival: readonly string[];
  lessons: readonly string[];
  story: string;
}>;

const storyWords = 120;
/** Share of words written with a slip. Chosen: about one in a short complaint of thirty. */
const slips = 0.03;
const ordinals = ["", "First", "Second", "Third", "Fourth", "Fifth", "Sixth"] as const;

/** Writes a job down: a complaint in the player's words, a story of about 120 words, one lesson. */
export function writeWords(job: CorpusJob, vocabulary: Vocabulary, random: Random): CorpusWords {
  const { cause, instrument, checks } = job;
  const told = checks.map((step) => sayFinding(step));
  const amiss = told.filter((_, at) => isAmiss(checks[at]));
  const said = random.shuffle(amiss.length > 0 ? amiss : told).slice(0, random.whole(1, 3));
  const name = say(instrument);
  const guess = vocabulary.causes.get(random.pick(cause.mistakenFor) ?? "");
  return {
    title: capital(`${said[0] ?? cause.label} on a ${name}`)
      .slice(0, 120)
      .trim(),
    complaint: sentences([...said, guess ? `${name}, they thought of ${say(guess).toLowerCase()}` : name])
      .split(" ")
      .map((word) => (random.chance(slips) ? misspell(word, random) : word))
      .join(" "),
    arrival: [random.pick(told) ?? cause.label].map((line) => line.toLowerCase()),
    lessons: [random.pick(prose(cause.prove)) ?? cause.prove].map((line) => line.slice(0, 300)),
    story: writeStory(),
  };

  function writeStory(): string {
    const repair = vocabulary.repairs.get(job.repair.repair);
    const before = [sentences(said), random.pick(prose(cause.comesAbout)) ?? ""];
    const after = [
      random.pick(prose(repair?.how ?? "")) ?? "",
      `${say(repair ?? cause)} and it was done.`,
      random.pick(repair?.goesWrong ?? []) ?? "",
    ].map(capital);
    const between = random.shuffle(
      checks.flatMap((step) => {
        const check = vocabulary.checks.get(step.check);
        return [
          `${capital(say(check ?? cause))}: ${sayFinding(step)}.`,
          random.pick(prose(check?.how ?? "")) ?? "",
        ];
      }),
    );
    const words = (list: readonly string[]) => list.join(" ").split(/\s+/).length;
    const kept: string[] = [];
    for (const sentence of between) {
      if (words([...before, ...kept, ...after]) >= storyWords) break;
      kept.push(sentence);
    }
    return [before, kept, after].map((list) => list.filter(Boolean).join(" ")).join("\n\n");
  }

  /** A finding as somebody would put it: the place, then one of the outcome's ways of being said. */
  function sayFinding({ check: id, found, part: written }: CheckStep): string {
    const outcome = vocabulary.checks.get(id)?.outcomes.find((one) => one.id === found);
    const words = random.pick(outcome?.synonyms ?? []) ?? outcome?.label ?? found;
    const ref = written === undefined ? undefined : parsePartRef(written);
    const part = ref && vocabulary.parts.get(ref.part);
    if (!ref || !part) return words;
    if (ref.others) return `the other ${say(part)} ${words}`;
    const number = ref.place === undefined ? "" : `${ordinals[ref.place] ?? ref.place} `;
    return `${number}${say(part).toLowerCase()} ${words}`;
  }

  function isAmiss(step: CheckStep | undefined): boolean {
    const normal = vocabulary.checks.get(step?.check ?? "")?.normal;
    return normal !== undefined && step?.found !== normal;
  }

  /** The label twice as often as any one synonym. */
  function say({ label, synonyms }: Readonly<{ label: string; synonyms: readonly string[] }>): string {
    return random.pick([label, label, ...synonyms]) ?? label;
  }
}

const prose = (text: string) => text.split(/(?<=\.) /).filter(Boolean);
const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);
const sentences = (list: readonly string[]) => list.map((line) => `${capital(line)}.`).join(" ");

/** Two neighbouring letters in the wrong order, as a hurried hand writes. */
export function misspell(word: string, random: Random): string {
  if (word.length < 5) return word;
  const at = random.whole(1, word.length - 3);
  return word.slice(0, at) + word.charAt(at + 1) + word.charAt(at) + word.slice(at + 2);
}
