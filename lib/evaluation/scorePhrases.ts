import { z } from "zod";
import type { Reader } from "../reading/reader";
import { readFindings } from "../reading/readFindings";
import { readInstrument } from "../reading/readInstrument";
import { idSchema } from "../vocabulary/words";

const meantSchema = z.strictObject({ check: idSchema, outcome: idSchema });

/**
 * A phrase of shop language with the findings that a careful reader takes from it.
 * `also` names findings that may be read from it as well, or in place of a neighbour, without being wrong.
 */
export const phraseSchema = z.strictObject({
  says: z.string().min(2),
  instrument: z.string().min(2),
  means: z.array(meantSchema),
  also: z.array(meantSchema).default([]),
});
export type Phrase = z.infer<typeof phraseSchema>;

/** What was misread of one phrase, each finding as `check: outcome`. */
export type Misread = Readonly<{ says: string; missed: readonly string[]; wrong: readonly string[] }>;

/** Precision = right / (right + wrong), recall = right / (right + missed), both 0..1; 1 where there is nothing to count. */
export type PhraseScore = Readonly<{
  phrases: number;
  precision: number;
  recall: number;
  right: number;
  wrong: number;
  missed: number;
  misread: readonly Misread[];
}>;

/**
 * Scores the reading of shop language: what was understood of each phrase against what it means.
 *
 * Source: precision and recall after van Rijsbergen 1979, counted over findings.
 */
export function scorePhrases(phrases: readonly Phrase[], reader: Reader): PhraseScore {
  const scored = phrases.map((phrase) => ({ says: phrase.says, ...scorePhrase(phrase, reader) }));
  const count = (kind: "right" | "wrong" | "missed") =>
    scored.reduce((sum, one) => sum + one[kind].length, 0);
  const [right, wrong, missed] = [count("right"), count("wrong"), count("missed")];
  return {
    phrases: phrases.length,
    precision: share(right, wrong),
    recall: share(right, missed),
    right,
    wrong,
    missed,
    misread: scored
      .filter((one) => one.wrong.length + one.missed.length > 0)
      .map(({ says, missed: absent, wrong: odd }) => ({ says, missed: absent, wrong: odd })),
  };
}

function scorePhrase({ says, instrument, means, also }: Phrase, reader: Reader) {
  const read = readFindings(says, reader, readInstrument(instrument, reader, says));
  const found = new Set(read.findings.map(nameOf));
  const wanted = new Set(means.map(nameOf));
  const allowed = new Set(also.map(nameOf));
  return {
    right: [...wanted].filter((name) => found.has(name)),
    missed: [...wanted].filter((name) => !found.has(name)),
    wrong: [...found].filter((name) => !wanted.has(name) && !allowed.has(name)),
  };
}

const nameOf = ({ check, outcome }: Readonly<{ check: string; outcome: string }>) => `${check}: ${outcome}`;

const share = (right: number, other: number) =>
  right + other === 0 ? 1 : Number((right / (right + other)).toFixed(4));
