/** Markers of ITU-T T.81, table B.1, that the photos made here have: frame, tables, restart interval, scan. */
const ownMarkers: ReadonlySet<number> = new Set([0xc0, 0xc2, 0xc4, 0xda, 0xdb, 0xdd]);
const frameMarkers: ReadonlySet<number> = new Set([0xc0, 0xc2]);
const startOfImage = 0xd8;
const endOfImage = 0xd9;
const startOfScan = 0xda;
const jfif = 0xe0;
const afterStart = 2;

/**
 * Looks through a JPEG for anything but the picture: EXIF, position, profiles, comments, bytes after its end.
 *
 * @param longestSide pixels that neither side may exceed
 * @returns what was found in the words of a problem; undefined where it is the picture alone, as `preparePhoto` makes it
 * Source: ITU-T T.81, annex B.
 */
export function findForeignSegment(bytes: Uint8Array, longestSide: number): string | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  if (bytes.length < 4 || view.getUint16(0) !== 0xff00 + startOfImage) return "no JPEG";
  let at = afterStart;
  let hasFrame = false;
  while (at + 2 <= bytes.length) {
    const marker = view.getUint8(at + 1);
    if (view.getUint8(at) !== 0xff) return "a JPEG whose parts do not follow each other";
    if (marker === endOfImage) {
      if (!hasFrame) return "a JPEG without a picture";
      return at + 2 === bytes.length ? undefined : "bytes after the end of the picture";
    }
    if (at + 4 > bytes.length) break;
    const length = view.getUint16(at + 2);
    if (length < 2 || at + 2 + length > bytes.length) break;
    if (marker === jfif ? !isPlainJfif(bytes, at) : !ownMarkers.has(marker))
      return `what a camera or a program writes beside the picture (marker ${marker.toString(16)})`;
    if (frameMarkers.has(marker)) {
      hasFrame = true;
      const [height, width] = length < 7 ? [0, 0] : [view.getUint16(at + 5), view.getUint16(at + 7)];
      if (Math.min(height, width) < 1 || Math.max(height, width) > longestSide)
        return `a picture of ${width} by ${height} pixels`;
    }
    at += 2 + length;
    if (marker === startOfScan) at = endOfScan(bytes, at);
  }
  return "a JPEG that is cut off";
}

/**
 * Whether the first segment names the format and nothing more: length 16, name, version, density, a thumbnail of 0 by 0.
 * Source: JFIF 1.02, page 5.
 */
function isPlainJfif(bytes: Uint8Array, at: number): boolean {
  const segment = Buffer.from(bytes.subarray(at + 2, at + 18));
  const [width, height] = segment.subarray(14);
  return (
    at === afterStart &&
    segment.subarray(0, 7).equals(Buffer.from("\0\x10JFIF\0", "latin1")) &&
    width === 0 &&
    height === 0
  );
}

/** Coded data ends at the next marker; a byte of 255 within it is followed by 0, and restarts belong to it. */
function endOfScan(bytes: Uint8Array, from: number): number {
  let at = from;
  while (at + 1 < bytes.length) {
    const next = bytes[at + 1] ?? 0;
    if (bytes[at] === 0xff && next !== 0 && !(next >= 0xd0 && next <= 0xd7)) return at;
    at += 1;
  }
  return bytes.length;
}
