import { type ArchiveReport, reportTaking } from "../../casebook/archive/archiveReport";
import type { ArchiveTaking } from "../../casebook/archive/archiveTaking";
import { openArchive } from "../../casebook/archive/openArchive";
import { takeArchive } from "../../casebook/archive/takeArchive";
import { ZipFault } from "../../casebook/archive/zipFault";
import { contentHash } from "../../casebook/keeping/contentHash";
import { mostSentBytes } from "../../safety/mostSentBytes";
import { zipTooLarge } from "./zipLimits";

/** A zip of a casebook that was looked at, or taken in. */
export type BroughtBack = Readonly<{
  name: string;
  /** The hash of its bytes: only what was looked at is taken in. */
  hash: string;
  written: boolean;
  report: ArchiveReport;
}>;

/** How far a zip on its way in has come; `fault` says what is wrong with it, or with the wish. */
export type BringBackState = Readonly<{ fault: string; found: BroughtBack | undefined }>;

/**
 * Looks at a zip that was sent, and takes it in where that is wished and it is the very zip that was looked at before.
 *
 * @param entries of the submitted form: `zip` the file, `wish` look or take, `seen` the hash of what was looked at
 */
export async function bringBack(
  entries: Iterable<readonly [string, unknown]>,
  taking: Omit<ArchiveTaking, "write">,
): Promise<BringBackState> {
  const sent = new Map(entries);
  const zip = sent.get("zip");
  const isTaking = sent.get("wish") === "take";
  if (!(zip instanceof Blob) || zip.size === 0)
    return {
      fault: isTaking
        ? "No zip came along. Choose the same one once more, then take it in."
        : "Nothing was chosen. Choose a zip that was taken as a copy here.",
      found: undefined,
    };
  if (zip.size > mostSentBytes) return { fault: zipTooLarge, found: undefined };
  const bytes = new Uint8Array(await zip.arrayBuffer());
  const hash = contentHash(bytes);
  const written = isTaking && sent.get("seen") === hash;
  try {
    const report = reportTaking(await takeArchive(openArchive(bytes), { ...taking, write: written }));
    const name = zip instanceof File ? zip.name.slice(0, 300) : "the zip";
    const fault =
      isTaking && !written
        ? "That is another zip than the one that was looked at. Nothing is written yet: look at this one first."
        : "";
    return { fault, found: { name, hash, written, report } };
  } catch (error) {
    if (!(error instanceof ZipFault)) throw error;
    return { fault: `In ${error.message}. Nothing was taken in.`, found: undefined };
  }
}
