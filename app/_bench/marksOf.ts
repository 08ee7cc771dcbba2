import type { Answer } from "@/lib/consult/answer";

/** A stretch of the sentence and how it was taken. */
export type Mark = Readonly<{ from: number; to: number; kind: "held" | "not" | "loose" }>;

/**
 * The stretches of a sentence to underline: what was understood, what was taken as not so, what was not understood.
 *
 * @param says the sentence that the answer was given to
 * @returns marks in order, none overlapping another
 */
export function marksOf(says: string, { understood, notUnderstood, swap }: Answer): readonly Mark[] {
  const read = understood.flatMap(({ span, absent }): Mark[] =>
    span ? [{ from: span[0], to: span[1], kind: absent ? "not" : "held" }] : [],
  );
  const tried = (swap?.tests ?? []).flatMap(({ span }): Mark[] =>
    span ? [{ from: span[0], to: span[1], kind: "held" }] : [],
  );
  const loose = notUnderstood.flatMap((words): Mark[] => {
    const from = words === "" ? -1 : says.indexOf(words);
    return from < 0 ? [] : [{ from, to: from + words.length, kind: "loose" }];
  });
  const inOrder = [...read, ...tried, ...loose].sort((a, b) => a.from - b.from || b.to - a.to);
  const kept: Mark[] = [];
  for (const mark of inOrder) {
    const last = kept.at(-1);
    const from = Math.max(mark.from, last?.to ?? 0);
    if (from < mark.to && mark.to <= says.length) kept.push({ ...mark, from });
  }
  return kept;
}
