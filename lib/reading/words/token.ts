import { rememberWords } from "../../text/rememberWords";
import { toTerm } from "../../text/terms";
import type { ReadingWords } from "../../vocabulary/readingWords";

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

/** A token that may be a measure. */
const numberPattern = /^[\d./]+$/;

/** Cuts a text into tokens; short forms are written out ("w/" as "with"). */
export function splitTokens(text: string, words: PreparedWords): Token[] {
  const tokens: Token[] = [];
  let last = 0;
  for (const match of text.matchAll(patternFor(text, words))) {
    const start = match.index;
    const end = start + match[0].length;
    const breakBefore = breakIn(text.slice(last, start));
    last = end;
    const spoken = words.shortForms.get(match[0].toLowerCase()) ?? match[0];
    for (const [index, part] of spoken.split(" ").entries()) {
      const { term, filler, place } = words.meaningOf(part);
      tokens.push({
        text: part,
        term,
        start,
        end,
        breakBefore: index === 0 ? breakBefore : "none",
        filler,
        ...(place === undefined ? {} : { place }),
      });
    }
  }
  return /\d/.test(text) ? markMeasures(tokens, words) : tokens;
}

/** The terms of a text without its fillers, in order. */
export const tellingTerms = (text: string, words: PreparedWords): string[] =>
  splitTokens(text, words).flatMap(({ term, filler }) => (filler ? [] : [term]));

/** Nearly no text has a short form of several words: where it has none, looking for them at every letter is spared. */
function patternFor(text: string, { pattern, wordPattern, writtenForms, marks }: PreparedWords): RegExp {
  if (!marks.test(text)) return wordPattern;
  const folded = foldCase(text);
  return writtenForms.some((form) => folded.includes(form)) ? pattern : wordPattern;
}

/** Makes letters the same that a pattern takes for the same whatever their case; some that it does not, too. */
const foldCase = (text: string) => text.toUpperCase().toLowerCase();

/** What a word says wherever it stands. */
type WordMeaning = Pick<Token, "term" | "filler" | "place">;

function meaningOf(
  text: string,
  { places, fillers }: Pick<PreparedWords, "places" | "fillers">,
): WordMeaning {
  const plain = text.toLowerCase().replace(/['’]/g, "");
  const place =
    places.get(plain) ?? (/^\d{1,2}(st|nd|rd|th)?$/.test(plain) ? Number.parseInt(plain, 10) : undefined);
  return {
    term: /^\d/.test(plain) || plain.startsWith(".") ? plain : toTerm(plain),
    filler: fillers.has(plain),
    ...(place === undefined || place === 0 ? {} : { place }),
  };
}

/** A decimal, or a number with a unit after it, is a measure and counts no place. */
function markMeasures(tokens: readonly Token[], words: PreparedWords): Token[] {
  return tokens.map((here, index) => {
    const next = tokens[index + 1];
    const isNumber = numberPattern.test(here.text);
    const hasUnit =
      next !== undefined && next.breakBefore === "none" && words.units.has(next.text.toLowerCase());
    if (!isNumber || !(hasUnit || /\./.test(here.text))) return here;
    const { place: _, ...rest } = here;
    return { ...rest, term: /\//.test(here.text) ? here.term : measureTerm };
  });
}

function breakIn(gap: string): Token["breakBefore"] {
  if (gap === " ") return "none";
  if (/[.;!?\n\r]/.test(gap)) return "sentence";
  return /[,:()]|\s[-–—]+\s|—/.test(gap) ? "clause" : "none";
}

/** A pattern for any one of some characters. */
function oneOf(characters: string): RegExp {
  const written = [...new Set(characters)].map((one) => `\\u{${one.codePointAt(0)?.toString(16)}}`);
  return new RegExp(`[${written.join("")}]`, "u");
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
  /** The same for a text that has none of `writtenForms`. */
  wordPattern: RegExp;
  /** The short forms that are no single words, in `foldCase`. */
  writtenForms: readonly string[];
  /** What stands in some of these and is no letter. */
  marks: RegExp;
  /** What a word says by itself, remembered. */
  meaningOf: (word: string) => WordMeaning;
}>;

/** Makes the small words ready: lower case, no apostrophes. */
export function prepareWords(words: ReadingWords): PreparedWords {
  const plain = (text: string) => text.toLowerCase().replace(/['’]/g, "");
  const forms = Object.keys(words.shortForms)
    .filter((form) => !/^\p{L}+$/u.test(form))
    .sort((a, b) => b.length - a.length);
  const written = forms.map((form) => `${form.replace(/[.*+?^${}()|[\]\\/]/g, "\\$&")}(?![\\p{L}\\d])`);
  const prepared: PreparedWords = {
    pattern: new RegExp([...written, tokenPattern.source].join("|"), "giu"),
    wordPattern: new RegExp(tokenPattern.source, "giu"),
    writtenForms: forms.map(foldCase),
    marks: oneOf(forms.join("").replace(/\p{L}/gu, "")),
    meaningOf: rememberWords((word) => meaningOf(word, prepared)),
    fillers: new Set(words.fillers.map(plain)),
    denials: new Set(
      words.deniesWhatFollows.filter((phrase) => !phrase.includes(" ")).map((word) => toTerm(plain(word))),
    ),
    joins: new Set(words.joinsParts.map(plain)),
    units: new Set(words.units.map(plain)),
    places: new Map(Object.entries(words.numbers).map(([word, value]) => [plain(word), value])),
    shortForms: new Map(Object.entries(words.shortForms).map(([word, full]) => [word.toLowerCase(), full])),
  };
  return prepared;
}
