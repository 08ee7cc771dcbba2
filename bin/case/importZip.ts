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
    const faults = taken.flatMap((file) =>
      file.state === "refused"
        ? file.problems.map(({ file: where, line, field, received, expected }) => ({
            where: [line > 0 ? `${where}:${line}` : where, field].filter(Boolean).join(" "),
            found: received,
            write: expected,
          }))
        : [],
    );
    const count = (state: string) => taken.filter((file) => file.state === state).length;
    return {
      file: name,
      written: write,
      ready: count("new"),
      thereAlready: count("there already"),
      refused: count("refused"),
      files: taken.map(({ path, state }) => ({ path, state })),
      faults,
    };
  } catch (error) {
    if (!(error instanceof ZipFault)) throw error;
    return fail(1, `${name}: ${error.message}; nothing was taken in`);
  }
}
