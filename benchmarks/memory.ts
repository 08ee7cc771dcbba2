import type { Memory } from "./measure";
import type { Result } from "./result";

/** Memory before anything was loaded, with the casebook, with all that a consultation needs, and with the search index too. */
export type MemoryStages = Readonly<{ before: Memory; loaded: Memory; built: Memory; searchable: Memory }>;

/** What the casebook and its indexes hold. */
export function benchMemory({ before, loaded, built, searchable }: MemoryStages): Result[] {
  const mb = (value: number) => `${value.toFixed(0)} MB`;
  return [
    { work: "memory of the casebook", shown: mb(loaded.liveMb - before.liveMb) },
    { work: "memory of the indexes", shown: mb(built.liveMb - loaded.liveMb) },
    { work: "memory of the search index", shown: mb(searchable.liveMb - built.liveMb) },
    { work: "memory that the process holds by then", shown: mb(searchable.residentMb) },
  ];
}
