import { readArchivePath } from "./archivePaths";
import { unpackEntry } from "./unpackEntry";
import { listZipEntries, type ZipEntry } from "./zipEntries";
import { ZipFault } from "./zipFault";

/** A file of an archive, still packed; `read` unpacks it and throws ZipFault where its bytes are not sound. */
export type ArchiveFile = Readonly<{ path: string; size: number; read: () => Uint8Array }>;

/** The files of an archive: cases and lessons by their id, photos by the names of their folders and their own. */
export type Archive = Readonly<{
  cases: readonly (ArchiveFile & Readonly<{ id: string }>)[];
  lessons: readonly (ArchiveFile & Readonly<{ id: string }>)[];
  photos: readonly (ArchiveFile & Readonly<{ segments: readonly string[] }>)[];
}>;

/** More cases and photos than a shop gathers in a working life. Chosen. */
const mostEntries = 50_000;
/** A case file's longest is a million characters, of up to four bytes. */
const largestCase = 4_000_000;
/** A photo as a camera makes it, and some. Chosen. */
const largestPhoto = 40_000_000;
/** All of it unpacked. Chosen: what fits into the memory of an old laptop several times over, file by file. */
const largestWhole = 4_000_000_000;
/** Text packs to a twentieth at most, photos hardly at all; DEFLATE itself reaches 1032. Chosen well above text. */
const greatestRatio = 200;
const smallEnough = 100_000;
const encrypted = 1;

/**
 * Opens an archive of a casebook and looks its directory over. Refused as a whole, before a byte is unpacked: paths that lead
 * out of the folders of cases, lessons and photos or that an export would not write, links, names that stand twice (also where only
 * capitals tell them apart), locked files, files that lie over one another, and files that swell to many times their packed size.
 *
 * @throws ZipFault for the first of these
 */
export function openArchive(zip: Uint8Array): Archive {
  const cases: Archive["cases"][number][] = [];
  const lessons: Archive["lessons"][number][] = [];
  const photos: Archive["photos"][number][] = [];
  const seen = new Set<string>();
  let whole = 0;
  const entries = listZipEntries(zip, mostEntries);
  refuseOverlap(entries);
  for (const entry of entries) {
    const { path, size } = entry;
    const place = readArchivePath(path);
    if (!place)
      throw new ZipFault(path, wrongPath(path), "only cases/ID.md, lessons/ID.md and pictures under photos/");
    refuseUnsound(entry, place.kind === "photo" ? largestPhoto : largestCase);
    const key = path.toLowerCase();
    if (seen.has(key)) throw new ZipFault(path, "this name a second time", "each file once");
    seen.add(key);
    whole += size;
    if (whole > largestWhole)
      throw new ZipFault("", "more than 4 GB unpacked", "a zip made by export, in several parts");
    const file = { path, size, read: () => unpackEntry(zip, entry) };
    if (place.kind === "case") cases.push({ ...file, id: place.id });
    if (place.kind === "lesson") lessons.push({ ...file, id: place.id });
    if (place.kind === "photo") photos.push({ ...file, segments: place.segments });
  }
  return { cases, lessons, photos };
}

function refuseUnsound({ path, flags, isLink, size, packedSize }: ZipEntry, largest: number): void {
  if (isLink) throw new ZipFault(path, "a link to elsewhere", "the file itself");
  if (flags & encrypted)
    throw new ZipFault(path, "a file locked with a password", "a zip without a password");
  if (size > largest)
    throw new ZipFault(path, `${size} bytes unpacked`, `files of at most ${largest} bytes here`);
  if (size > smallEnough && size > greatestRatio * packedSize) {
    const received = `a file that swells from ${packedSize} to ${size} bytes`;
    throw new ZipFault(path, received, "a zip made by export, whose files hold what they seem to");
  }
}

/** Bytes that several files share unpack to far more than a zip of that size could hold. */
function refuseOverlap(entries: readonly ZipEntry[]): void {
  let end = 0;
  for (const { path, start, packedSize } of entries.toSorted((a, b) => a.start - b.start)) {
    if (start < end)
      throw new ZipFault(
        path,
        "a file that lies over another",
        "a zip made by export, each file in its own place",
      );
    end = start + packedSize + path.length;
  }
}

function wrongPath(path: string): string {
  const segments = path.split(/[\\/]/);
  if (segments.includes("..") || /^([\\/]|[a-z]:)/i.test(path))
    return "a path that leads out of the casebook";
  return /[\u0000-\u001f\u007f\\]/.test(path)
    ? "a path with signs in it that no file here has"
    : "a file that belongs to no casebook";
}
