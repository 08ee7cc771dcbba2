import { reportTaking } from "@/lib/casebook/archive/archiveReport";
import { openArchive } from "@/lib/casebook/archive/openArchive";
import { takeArchive } from "@/lib/casebook/archive/takeArchive";
import { ZipFault } from "@/lib/casebook/archive/zipFault";
import { fail } from "../fail";
import { openShelf } from "./openShelf";

/** Takes an exported zip in and tells what became of its files. */
export async function importZip(bytes: Uint8Array, name: string, write: boolean) {
  const shelf = openShelf();
  try {
    const taken = await takeArchive(openArchive(bytes), { ...shelf, write });
    const { differing, refused } = reportTaking(taken);
    const count = (state: string) => taken.filter((file) => file.state === state).length;
    return {
      file: name,
      written: write,
      ready: count("new"),
      thereAlready: count("there already"),
      differing: count("differs"),
      refused: count("refused") + count("differs"),
      files: taken.map(({ path, state }) => ({ path, state })),
      faults: [...refused, ...differing].map(({ where, found, write: instead }) => ({
        where,
        found,
        write: instead,
      })),
    };
  } catch (error) {
    if (!(error instanceof ZipFault)) throw error;
    return fail(1, `${name}: ${error.message}; nothing was taken in`);
  }
}
