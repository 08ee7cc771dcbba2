import type { ContentProblem } from "../../document/contentProblem";
import { listContentFiles } from "./listContentFiles";
import { type OpenFile, openContentFile } from "./openContentFile";

/** Files of one kind, read when they are asked for and again only once they have changed on disk. */
export type ContentShelf<Entry> = Readonly<{
  /** The entry of one file; undefined where there is none that can be read. */
  get: (file: string) => Entry | undefined;
  /** All entries in the order of their files' names, and what is wrong with the others. */
  all: () => Readonly<{ entries: readonly Entry[]; problems: readonly ContentProblem[] }>;
}>;

/** What one file came to. */
export type ShelfReading<Entry> = Readonly<{ entry: Entry | undefined; problems: readonly ContentProblem[] }>;

/**
 * Opens a folder as a shelf. What an editor or another program changes is seen at the next look: a file counts as unchanged
 * while its time, size and number on disk are the same.
 *
 * @param read must not look at anything but the text and the file's name
 */
export function openContentShelf<Entry>(
  folder: string,
  read: (text: string, file: string) => ShelfReading<Entry>,
): ContentShelf<Entry> {
  const known = new Map<string, Readonly<{ stamp: string; reading: ShelfReading<Entry> }>>();
  const look = (file: string): ShelfReading<Entry> =>
    openContentFile<ShelfReading<Entry>>(folder, file, {
      refuse: (problem) => {
        known.delete(file);
        return { entry: undefined, problems: [problem] };
      },
      read: ({ status, bytes, decode }) => {
        const stamp = stampOf(status);
        const before = known.get(file);
        if (before?.stamp === stamp) return before.reading;
        const reading = read(decode(bytes()), file);
        known.set(file, { stamp, reading });
        return reading;
      },
    });
  return {
    get: (file) => look(file).entry,
    all: () => {
      const readings = listContentFiles(folder).map(look);
      return {
        entries: readings.flatMap(({ entry }) => entry ?? []),
        problems: readings.flatMap(({ problems }) => problems),
      };
    },
  };
}

const stampOf = ({ ino, size, mtimeMs, ctimeMs }: OpenFile["status"]) =>
  [ino, size, mtimeMs, ctimeMs].join(" ");
