import { type ClauseSources, clauseSources } from "../../reading/clauses/clauseSources";
import { outcomeName } from "../../reading/clauses/outcomeMeaning";
import { forgetSaying, openOutcomes } from "../../reading/clauses/spokenOutcomes";
import type { Reader } from "../../reading/reader";
import { takeApart } from "../../reading/sentence";
import { splitTokens } from "../../reading/words/token";
import { appliesTo } from "../../vocabulary/appliesTo";
import type { Saying } from "../../vocabulary/saying";

/** A clause of a saying with what every source says of it, which outcomes make sense there, and which it tells of; none tells of nothing that is known. */
export type ClauseSample = Readonly<{
  saying: Saying;
  sources: ClauseSources;
  open: readonly boolean[];
  tells: readonly number[];
}>;

/**
 * Asks the sources about the clauses of every saying, each as if nobody had written it. A clause of which something may be read
 * that need not be teaches nothing, and is left out.
 *
 * Source: leave-one-out cross-validation, Stone 1974.
 */
export function sampleSayings(reader: Reader): ClauseSample[] {
  return reader.vocabulary.sayings.flatMap((saying) => {
    forgetSaying(reader, saying);
    try {
      return sampleSaying(saying, reader);
    } finally {
      forgetSaying(reader, saying, true);
    }
  });
}

function sampleSaying(saying: Saying, reader: Reader): ClauseSample[] {
  const { says, instrument, means, also } = saying;
  const { spoken, vocabulary, words } = reader;
  const served = new Set(
    [...vocabulary.checks.values()].filter(({ families }) => appliesTo(vocabulary, families, instrument)),
  );
  const names = openOutcomes(spoken, ({ check }) => served.has(check));
  const open = spoken.meanings.map((meaning) => names.has(outcomeName(meaning)));
  const sentences = takeApart(splitTokens(says, words), reader, instrument, ({ check }) => served.has(check));
  const clauses = sentences.flatMap((sentence) =>
    clauseSources(sentence, reader, (name) => names.has(name), undefined).map((sources) => {
      const [first, last] = [sources.tokens[0] ?? 0, sources.tokens.at(-1) ?? 0];
      return { sources, from: sentence.tokens[first]?.start ?? 0, to: sentence.tokens[last]?.end ?? 0 };
    }),
  );
  /** The clause that has the most of the words. */
  const clauseOf = (told: string) => {
    const from = says.indexOf(told);
    const shared = clauses.map(
      (clause) => Math.min(clause.to, from + told.length) - Math.max(clause.from, from),
    );
    return shared.indexOf(Math.max(...shared));
  };
  const tells = means.map(({ check, outcome, words: told }) => ({
    row: spoken.rowOf.get(`${check} ${outcome}`) ?? -1,
    clause: clauseOf(told),
  }));
  return clauses.flatMap(({ sources }, at) => {
    const own = tells.filter(({ row, clause }) => clause === at && open[row]).map(({ row }) => row);
    return own.length === 0 && also.length > 0 ? [] : [{ saying, sources, open, tells: own }];
  });
}
