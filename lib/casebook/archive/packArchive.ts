import { Zip, ZipDeflate, ZipPassThrough } from "fflate";

/** A file to pack: read only when its turn comes, so that not all photos are in memory at once. */
export type FileToPack = Readonly<{ path: string; read: () => Uint8Array }>;

/** The earliest day that a zip can name: the same casebook gives the same bytes whenever it is packed. */
const noDay = () => new Date(1980, 0, 1);
const level = 6;

/**
 * Packs files into a zip, one after another: text is deflated, pictures are packed already and are stored as they are.
 *
 * @returns the zip's bytes in pieces, in order
 */
export function* packArchive(files: Iterable<FileToPack>): Generator<Uint8Array> {
  let ready: Uint8Array[] = [];
  const zip = new Zip((fault, piece) => {
    if (fault) throw fault;
    ready.push(piece);
  });
  const take = () => {
    const pieces = ready;
    ready = [];
    return pieces;
  };
  for (const { path, read } of files) {
    const bytes = read();
    const entry = path.endsWith(".md") ? new ZipDeflate(path, { level }) : new ZipPassThrough(path);
    entry.mtime = noDay();
    zip.add(entry);
    entry.push(bytes, true);
    yield* take();
  }
  zip.end();
  yield* take();
}
