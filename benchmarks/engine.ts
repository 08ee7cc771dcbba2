import { buildCaseTable, type CaseTable } from "@/lib/similarity/caseTable";
import { type CompiledQuery, compileQuery } from "@/lib/similarity/compileQuery";
import { retrieve } from "@/lib/similarity/retrieve";
import type { Query, Row } from "@/lib/similarity/row";
import { drawQueries, drawRows, type EngineShape, engineAttributes } from "./engineRows";
import { measure, quantile, timeOnce } from "./measure";
import { naiveRetrieve } from "./naiveRetrieve";
import { seedRandom } from "./random";
import { bytesAsked, readBytes } from "./readBytes";
import { type Result, showSeconds, showTimings } from "./result";

const seed = 20260311;
const k = 25;
const queryCount = 20;
const rounds = 3;
const naiveRuns = 5;
const warmUp = 5;

/** Chosen: the first has the attributes of the bench, in number; the second shows what numbers cost. */
const shapes: Readonly<Record<string, EngineShape>> = {
  "24 attributes in codes": { nominal: 16, ordinal: 8, numeric: 0 },
  "20 in codes, 4 numbers": { nominal: 14, ordinal: 6, numeric: 4 },
};

/**
 * Times the bare engine over made-up rows: the 25 most alike by 24 attributes and 12 findings of 300, beside reading the same
 * bytes and doing nothing, and beside the plain way over objects.
 *
 * @throws RangeError when the plain way finds other rows than the engine
 */
export const benchEngine = (count: number): Result[] =>
  Object.entries(shapes).flatMap(([name, shape]) => benchShape(name, shape, count));

function benchShape(name: string, shape: EngineShape, count: number): Result[] {
  const random = seedRandom(seed);
  const attributes = engineAttributes(shape);
  const rows = drawRows(attributes, count, random);
  const queries = drawQueries(attributes, queryCount, random);
  const building = timeOnce(() => buildCaseTable(attributes, rows));
  const table = building.value;
  const compiled = queries.map((query) => compileQuery(table, query));
  expectSame(table, rows, queries, compiled);

  const runs = rounds * queryCount;
  const retrieval = measure((number) => retrieve(table, at(queries, number), { k }), { runs, warmUp });
  const stretches = compiled.map((one) => bytesAsked(one, table.rowCount));
  const reading = measure((number) => readBytes(at(stretches, number)), { runs, warmUp });
  const naive = measure((number) => naiveRetrieve(rows, at(compiled, number), k), {
    runs: naiveRuns,
    warmUp: 1,
  });
  const middle = (timings: readonly Readonly<{ ms: number }>[]) =>
    quantile(
      timings.map(({ ms }) => ms),
      0.5,
    );
  const times = (factor: number) => `${factor.toFixed(factor < 10 ? 1 : 0)} times`;
  return [
    { work: `${name}: retrieve`, shown: showTimings(retrieval) },
    { work: "reading the same bytes", shown: showTimings(reading) },
    { work: "retrieving takes so much longer", shown: times(middle(retrieval) / middle(reading)) },
    { work: "the plain way over objects", shown: showTimings(naive) },
    { work: "it takes so much longer than retrieving", shown: times(middle(naive) / middle(retrieval)) },
    { work: "put all rows into the table", shown: showSeconds(building) },
  ];
}

function expectSame(
  table: CaseTable,
  rows: readonly Row[],
  queries: readonly Query[],
  compiled: readonly CompiledQuery[],
): void {
  const fast = retrieve(table, at(queries, 0), { k });
  const plain = naiveRetrieve(rows, at(compiled, 0), k);
  // Sums in another order differ in their last digits, so that only what they come to is compared.
  const isSame = fast.every(
    ({ similarity }, rank) => Math.abs(similarity - (plain[rank]?.similarity ?? 0)) < 1e-9,
  );
  if (!isSame || fast.length !== plain.length) {
    throw new RangeError(
      `both ways must find rows as much alike; got ${fast[0]?.similarity} and ${plain[0]?.similarity} first; mend naiveRetrieve`,
    );
  }
}

function at<Item>(list: readonly Item[], number: number): Item {
  const item = list[number % list.length];
  if (item === undefined)
    throw new RangeError("a suite must have something to ask; got nothing; raise queryCount");
  return item;
}
