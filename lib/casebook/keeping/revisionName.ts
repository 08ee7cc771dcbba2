/** A version of a case that is kept beside the casebook. */
export type Revision = Readonly<{
  /** 1 for the first that was kept; the order in which they were kept, whatever the clock said. */
  number: number;
  /** When it was kept by the clock of that time, as `2026-11-25T16:27:00Z`. */
  at: string;
  /** The first digits of the hash of its bytes. */
  hash: string;
  /** Written on a version that was no longer the one on disk: kept, but never put in its place. */
  aside: boolean;
}>;

/** As many digits of a hash as stand in a name: 64 bits tell the versions of one case apart and show a damaged one. */
const digits = 16;
const pattern = /^(\d{6,9})-(\d{4})(\d\d)(\d\d)T(\d\d)(\d\d)(\d\d)Z-([0-9a-f]{16})(\.aside)?\.md$/;

/** The part of a hash that a revision is named by. */
export const shortHash = (hash: string) => hash.slice(0, digits);

/**
 * Names the file of a revision.
 *
 * @example formatRevisionName({ number: 3, at: "2026-11-25T16:27:00Z", hash: "0123456789abcdef", aside: false })
 *          // "000003-20261125T162700Z-0123456789abcdef.md"
 */
export function formatRevisionName({ number, at, hash, aside }: Revision): string {
  const stamp = at.replaceAll(/[-:]/g, "");
  return `${String(number).padStart(6, "0")}-${stamp}-${hash}${aside ? ".aside" : ""}.md`;
}

/** Reads a revision back from its file's name; undefined for any other file. */
export function parseRevisionName(name: string): Revision | undefined {
  const [, number, year, month, day, hour, minute, second, hash = "", aside] = pattern.exec(name) ?? [];
  if (number === undefined) return undefined;
  const at = `${year}-${month}-${day}T${hour}:${minute}:${second}Z`;
  return { number: Number(number), at, hash, aside: aside !== undefined };
}

/** A clock's time to the second, as a revision carries it. */
export function stampOf(nowMs: number): string {
  return `${new Date(nowMs).toISOString().slice(0, 19)}Z`;
}
