import type { ShownPlan } from "@/lib/exchange/import/importDraft";

const dayWords = { dmy: "day first", mdy: "month first", ymd: "year first" } as const;
const markWords = { point: "with a decimal point", comma: "with a decimal comma" } as const;

/** Says how the dates and numbers of a file were read, and by what it is known. */
export function settledWords({ dates, decimal }: Pick<ShownPlan, "dates" | "decimal">): string[] {
  return [
    wordsOf("Dates", dates, dayWords, "Say in step 2 whether the day or the month stands first."),
    wordsOf("Numbers", decimal, markWords, "Say in step 2 how 1,250 is meant."),
  ].flatMap((words) => words ?? []);
}

function wordsOf<Way extends string>(
  what: string,
  settled: { kind: string; way?: Way; line?: number; text?: string },
  names: Readonly<Record<Way, string>>,
  ask: string,
): string | undefined {
  const { kind, way, line, text } = settled;
  if (kind === "proven" && way)
    return `${what} are read ${names[way]}: line ${line} has ${text}, which can be nothing else.`;
  if (kind === "open")
    return `${what} can be read in more than one way, and nothing in the file tells. ${ask}`;
  if (kind === "mixed")
    return `${what} are written in more than one way (line ${line} has ${text}, others differ). ${ask}`;
  return undefined;
}
