import { packArrays } from "../../../casebook/snapshot/packArrays";
import { layTable } from "../../../similarity/tableColumns";
import type { Learned } from "./learned";

/**
 * Lays what the cases have taught out as bytes.
 *
 * @param marks by id what stands for a case as it was learned, such as its file's hash: one for every case learned
 * @param told what `tellSamples` tells of some of these cases
 * @returns what `unpackLearned` reads back
 * @throws RangeError when a case has been taken back from the table: learn all of them anew first
 */
export function packLearned(
  { model, table, spoken, repairs }: Learned,
  marks: ReadonlyMap<string, string>,
  told: string,
): Uint8Array {
  const { ids, dates, columns } = layTable(table);
  const { terms, starts, rows, counts, sizes } = spoken.lessons();
  return packArrays(
    { marks: ids.map((id) => marks.get(id) ?? ""), told, ids, dates, terms, repairs: [...repairs] },
    [starts, rows, counts, sizes, ...model.lessons(), ...columns],
  );
}
