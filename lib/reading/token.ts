import { toTerm } from "../text/terms";
import type { ReadingWords } from "../vocabulary/readingWords";

/**
 * A word of the technician's text. `term` is the form that is matched; `start` and `end` are places in the text;
 * `breakBefore` tells what stands before it: nothing, a comma or dash (`clause`), a full stop (`sentence`).
 */
export type Token = Readonly<{
  text: string;
  term: string;
  start: number;
  end: number;
  breakBefore: "none" | "clause" | "sentence";
  /** The place that the word counts ("2nd", "middle"), or the whole number that it is. */
  place?: number;
  filler: boolean;
}>;

/** The term under which every measure is matched: ".002", "2 thou". */
export const measureTerm = "#";

/** Fractions, decimals, ordinals, whole numbers, words. */
const tokenPattern = /\d+\/\d+|\d*\.\d+|\d+(?:st|nd|rd|th)\b|\d+|\p{L}+(?:['’]\p{L}+)*/u;

/** Cuts a text into tokens; short forms are written out ("w/" as "with"). */
export function splitTokens(text: string, words: PreparedWords): Token[] {
  const tokens: Token[] = [];
  let last = 0;
  for (const match of text.matchAll(words.pattern)) {
    const start = match.index;
    const end = start + match[0].length;
    const breakBefore = breakIn(text.slice(last, start));
    last = end;
    const spoken = words.shortForms.get(match[0].toLowerCase()) ?? match[0];
    for (const [index, part] of spoken.split(" ").entries()) {
      tokens.push(token(part, start, end, index === 0 ? breakBefore : "none", words));
    }
  }
  return markMeasures(tokens, words);
}

function token(
  text: string,
  start: number,
  end: number,
  breakBefore: Token["breakBefore"],
  words: PreparedWords,
): Token {
  const plain = text.toLowerCase().replace(/['’]/g, "");
  const place =
    words.places.get(plain) ??
    (/^\d{1,2}(st|nd|rd|th)?$/.test(plain) ? Number.parseInt(plain, 10) : undefined);
  return {
    text,
    term: /^\d/.test(plain) || plain.startsWith(".") ? plain : toTerm(plain),
    start,
    end,
    breakBefore,
    filler: words.fillers.has(plain),
    ...(place === undefined || place === 0 ? {} : { place }),
  };
}

/** A decimal, or a number with a unit after it, is a measure and counts no place. */
function markMeasures(tokens: readonly Token[], words: PreparedWords): Token[] {
  return tokens.map((here, index) => {
    const next = tokens[index + 1];
    const isNumber = /^[\d./]+$/.test(here.text);
    const hasUnit =
      next !== undefined && next.breakBefore === "none" && words.units.has(next.text.toLowerCase());
    if (!isNumber || !(hasUnit || /\./.test(here.text))) return here;
    const { place: _, ...rest } = here;
    return { ...rest, term: /\//.test(here.text) ? here.term : measureTerm };
  });
}

function breakIn(gap: string): Token["breakBefore"] {
  if (/[.;!?\n\r]/.test(gap)) return "sentence";
  return /[,:()]|\s[-–—]+\s|—/.test(gap) ? "clause" : "none";
}

/** The small words of reading.yaml, made ready for looking up. */
export type PreparedWords = Readonly<{
  fillers: ReadonlySet<string>;
  units: ReadonlySet<string>;
  places: ReadonlyMap<string, number>;
  shortForms: ReadonlyMap<string, string>;
  /** Words that join numbered parts: "1st and 3rd". */
  joins: ReadonlySet<string>;
  /** Terms of single words that deny what follows. */
  denials: ReadonlySet<string>;
  /** What counts as one token: the short forms as they are written ("w/o"), then numbers and words. */
  pattern: RegExp;
}>;

/** Makes the small words ready: lower case, no apostrophes. */
export function prepareWords(words: ReadingWords): PreparedWords {
  const plain = (text: string) => text.toLowerCase().replace(/['’]/g, "");
  const written = Object.keys(words.shortForms)
    .filter((form) => !/^\p{L}+$/u.test(form))
    .sort((a, b) => b.length - a.length)
    .map((form) => `${form.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&")}(?![\\p{L}\\d])`);
  return {
    pattern: new RegExp([...written, tokenPattern.source].join("|"), "giu"),
    fillers: new Set(words.fillers.map(plain)),
    denials: new Set(
      words.deniesWhatFollows.filter((phrase) => !phrase.includes(" ")).map((word) => toTerm(plain(word))),
    ),
    joins: new Set(words.joinsParts.map(plain)),
    units: new Set(words.units.map(plain)),
    places: new Map(Object.entries(words.numbers).map(([word, value]) => [plain(word), value])),
    shortForms: new Map(Object.entries(words.shortForms).map(([word, full]) => [word.toLowerCase(), full])),
  };
}
