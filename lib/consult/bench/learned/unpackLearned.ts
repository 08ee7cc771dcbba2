import { z } from "zod";
import { type PackedArray, unpackArrays } from "../../../casebook/snapshot/packArrays";
import type { CauseModel } from "../../../diagnosis/causeModel";
import { WordModel } from "../../../diagnosis/wordModel";
import { takeUpTable } from "../../../similarity/tableColumns";
import type { Vocabulary } from "../../../vocabulary/vocabulary";
import { caseAttributes } from "../caseAttributes";
import type { Learned } from "./learned";

const count = z.int().min(0);
const harmSchema = z.object({ case: z.string(), received: z.string(), what: z.string() });
const countSchema = z.object({ instrument: z.string(), done: count, harmed: count });
const recordSchema = z.object({
  done: count,
  harmed: count,
  harms: z.array(harmSchema),
  counts: z.array(countSchema),
});
const headSchema = z.object({
  /** In the order of the ids. */
  marks: z.array(z.string()),
  told: z.string(),
  ids: z.array(z.string()),
  dates: z.array(z.string()),
  terms: z.array(z.string()),
  repairs: z.array(z.tuple([z.string(), recordSchema])),
});

/** Of which cases something was learned, as they then were, what `tellSamples` told of some of them, and what it was. */
export type UnpackedLearned = Readonly<{
  marks: ReadonlyMap<string, string>;
  told: string;
  /** Makes the handbook's model, before any case, into that of the cases. */
  takeUp: (handbook: CauseModel) => Learned;
}>;

/**
 * Reads back what `packLearned` laid out.
 *
 * @param vocabulary the one by which the cases were learned
 * @throws RangeError, SyntaxError or ZodError when the bytes, now or when they are taken up, are none of that kind
 */
export function unpackLearned(bytes: Uint8Array, vocabulary: Vocabulary): UnpackedLearned {
  const { head, arrays } = unpackArrays(bytes);
  const { marks, told, ids, dates, terms, repairs } = headSchema.parse(head);
  const [starts, rows, counts, sizes, jobs, allCounts, ownCounts, ...columns] = arrays;
  const takeUp = (handbook: CauseModel): Learned => {
    // The attributes' weights rest on the handbook alone: they are worked out before the model is told of any case.
    const table = takeUpTable(caseAttributes(vocabulary, handbook), { ids, dates, columns });
    handbook.recall([jobs, allCounts, ownCounts].map((array) => mustBe(array, Float64Array)));
    const spoken = new WordModel(handbook.causes);
    spoken.recall({
      terms,
      starts: mustBe(starts, Int32Array),
      rows: mustBe(rows, Int32Array),
      counts: mustBe(counts, Float64Array),
      sizes: mustBe(sizes, Float64Array),
    });
    return { model: handbook, table, spoken, repairs: new Map(repairs) };
  };
  return { marks: new Map(ids.map((id, row) => [id, marks[row] ?? ""])), told, takeUp };
}

function mustBe<Kind extends PackedArray>(
  array: PackedArray | undefined,
  kind: new (length: number) => Kind,
): Kind {
  if (array instanceof kind) return array;
  throw new RangeError(
    `what was learned must be in ${kind.name}; got ${array?.constructor.name ?? "nothing"}; learn it anew`,
  );
}
