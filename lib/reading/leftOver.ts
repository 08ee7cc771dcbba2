import type { Mention } from "./parts/mentions";
import type { Reader } from "./reader";
import type { Scopes } from "./words/scopes";
import type { Token } from "./words/token";

/** A run of nothing but shorter words says nothing that could be asked about. */
const shortestStrange = 4;

/**
 * Finds the runs of words that nothing took up: neither a finding, nor a part, nor one of the small words.
 *
 * @param used tokens that a finding took
 * @returns the runs as they stand in the text, in its order
 */
export function leftOver(
  sentence: readonly Token[],
  used: ReadonlySet<number>,
  mentions: readonly Mention[],
  scopes: Scopes,
  text: string,
  reader: Reader,
): string[] {
  const explained = (at: number, token: Token) =>
    used.has(at) ||
    token.filler ||
    scopes.isSmallWord(at) ||
    mentions.some(({ first, last }) => at >= first && at <= last) ||
    reader.instruments.byTerm.has(token.term);
  const runs: Token[][] = [];
  let open: Token[] | undefined;
  for (const [at, token] of sentence.entries()) {
    if (explained(at, token)) {
      if (!token.filler) open = undefined;
      continue;
    }
    if (open && token.breakBefore === "none") open.push(token);
    else {
      open = [token];
      runs.push(open);
    }
  }
  const telling = runs.filter((run) => run.some(({ text: word }) => word.length >= shortestStrange));
  return telling.map((run) => text.slice(run[0]?.start ?? 0, run.at(-1)?.end ?? 0));
}
