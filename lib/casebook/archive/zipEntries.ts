import { ZipFault } from "./zipFault";

/** One file of a zip as its directory tells of it; `start` is where its local header begins. */
export type ZipEntry = Readonly<{
  path: string;
  method: number;
  flags: number;
  crc: number;
  packedSize: number;
  size: number;
  start: number;
  isLink: boolean;
}>;

const endSignature = 0x06054b50;
const entrySignature = 0x02014b50;
const endSize = 22;
const entrySize = 46;
const longestComment = 0xffff;
const unixHost = 3;
const linkMode = 0o120000;
const modeMask = 0o170000;
const zip64Size = 0xffffffff;
const zip64Count = 0xffff;

/**
 * Lists the files of a zip by its central directory, in its order. Nothing is unpacked.
 *
 * @param mostEntries more are refused before any is looked at
 * @throws ZipFault for what is no zip, is cut short, lies in parts or is larger than a plain zip can say
 * Source: PKWARE APPNOTE 6.3.10, sections 4.3.12 (directory), 4.3.16 (its end) and 4.4.2 (host), 4.4.15 (attributes).
 */
export function listZipEntries(bytes: Uint8Array, mostEntries: number): ZipEntry[] {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const size = view.getUint32(end + 12, true);
  let at = view.getUint32(end + 16, true);
  if (view.getUint16(end + 4, true) !== 0 || view.getUint16(end + 8, true) !== count)
    throw new ZipFault("", "one of several parts of a zip", "the whole zip in one file");
  if (count === zip64Count || at === zip64Size)
    throw new ZipFault("", "a zip of the large kind", "a zip made by export, split into smaller ones");
  if (count > mostEntries) throw new ZipFault("", `${count} files`, `a zip of at most ${mostEntries} files`);
  if (at + size > end) throw cutShort();
  const entries: ZipEntry[] = [];
  for (let number = 0; number < count; number++) {
    if (at + entrySize > end || view.getUint32(at, true) !== entrySignature) throw cutShort();
    const nameLength = view.getUint16(at + 28, true);
    const next = at + entrySize + nameLength + view.getUint16(at + 30, true) + view.getUint16(at + 32, true);
    if (next > end) throw cutShort();
    const host = view.getUint16(at + 4, true) >> 8;
    const mode = view.getUint32(at + 38, true) >>> 16;
    entries.push({
      path: readName(bytes.subarray(at + entrySize, at + entrySize + nameLength)),
      flags: view.getUint16(at + 8, true),
      method: view.getUint16(at + 10, true),
      crc: view.getUint32(at + 16, true),
      packedSize: view.getUint32(at + 20, true),
      size: view.getUint32(at + 24, true),
      start: view.getUint32(at + 42, true),
      isLink: host === unixHost && (mode & modeMask) === linkMode,
    });
    at = next;
  }
  return entries;
}

const utf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

/** Reads a file's name; one that is no UTF-8 could be read as another name by another program. */
export function readName(bytes: Uint8Array): string {
  try {
    return utf8.decode(bytes);
  } catch (error) {
    if (!(error instanceof TypeError)) throw error;
    throw new ZipFault(
      "",
      "a file name in bytes that are not UTF-8",
      "file names of plain letters and digits",
    );
  }
}

export const cutShort = () => new ZipFault("", "a zip that is cut short or damaged", "the zip copied anew");

function findEnd(view: DataView): number {
  const first = Math.max(0, view.byteLength - endSize - longestComment);
  for (let at = view.byteLength - endSize; at >= first; at--) {
    const isEnd =
      view.getUint32(at, true) === endSignature &&
      at + endSize + view.getUint16(at + 20, true) === view.byteLength;
    if (isEnd) return at;
  }
  throw new ZipFault("", "no zip, or one that is cut short", "a zip made by export");
}
