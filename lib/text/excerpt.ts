import { splitWords, toTerm } from "./terms";

/** A run of text, marked where it holds a word that was searched for. */
export type ExcerptRun = Readonly<{ text: string; hit: boolean }>;

/**
 * Cuts out the stretch of a text that holds the most of the terms and marks them.
 *
 * @param terms index terms, as a hit brings them
 * @param length about how many characters to show
 * @returns runs that join to the excerpt; an ellipsis stands where text was left away; the text's beginning where nothing matches
 */
export function excerpt(text: string, terms: readonly string[], length = 180): ExcerptRun[] {
  const plain = text.replace(/\s+/g, " ").trim();
  const wanted = new Set(terms);
  const hits = splitWords(plain).filter((word) => wanted.has(toTerm(word.text)));
  const start = bestStart(plain, hits, length);
  const end = Math.min(plain.length, start + length);
  const stop = end === plain.length ? end : Math.max(start + 1, plain.lastIndexOf(" ", end));

  const runs: ExcerptRun[] = [];
  const push = (from: number, to: number, hit: boolean) => {
    if (to > from) runs.push({ text: plain.slice(from, to), hit });
  };
  if (start > 0) runs.push({ text: "… ", hit: false });
  let position = start;
  for (const hit of hits.filter((word) => word.start >= start && word.end <= stop)) {
    push(position, hit.start, false);
    push(hit.start, hit.end, true);
    position = hit.end;
  }
  push(position, stop, false);
  if (stop < plain.length) runs.push({ text: " …", hit: false });
  return runs;
}

function bestStart(text: string, hits: readonly Readonly<{ start: number }>[], length: number): number {
  let best = 0;
  let most = 0;
  for (const { start } of hits) {
    const inside = hits.filter((other) => other.start >= start && other.start < start + length * 0.8).length;
    if (inside > most) {
      most = inside;
      best = start;
    }
  }
  if (best < length * 0.5) return 0;
  const lead = text.lastIndexOf(". ", best);
  const from =
    lead > best - length * 0.4 ? lead + 2 : text.indexOf(" ", best - Math.min(40, length * 0.4)) + 1;
  return Math.max(0, Math.min(from, best));
}
