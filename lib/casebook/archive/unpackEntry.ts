import { inflateRawSync } from "node:zlib";
import { crc32 } from "./crc32";
import { cutShort, readName, type ZipEntry } from "./zipEntries";
import { ZipFault } from "./zipFault";

const localSignature = 0x04034b50;
const localSize = 30;
const stored = 0;
const deflated = 8;

/**
 * Unpacks one file of a zip. No more bytes than its directory speaks of are ever made, whatever its packed bytes say.
 *
 * @param zip the whole zip
 * @throws ZipFault where the file's own header, its size or its check sum is not what the directory says
 * Source: PKWARE APPNOTE 6.3.10, section 4.3.7 (local header) and 4.4.5 (methods).
 */
export function unpackEntry(zip: Uint8Array, entry: ZipEntry): Uint8Array {
  const view = new DataView(zip.buffer, zip.byteOffset, zip.byteLength);
  const { path, start, packedSize, size, method } = entry;
  if (start + localSize > zip.length || view.getUint32(start, true) !== localSignature) throw cutShort();
  const nameEnd = start + localSize + view.getUint16(start + 26, true);
  const from = nameEnd + view.getUint16(start + 28, true);
  if (from + packedSize > zip.length) throw cutShort();
  if (readName(zip.subarray(start + localSize, nameEnd)) !== path)
    throw new ZipFault(
      path,
      "another name at the file itself",
      "a zip whose directory tells of its own files",
    );
  const packed = zip.subarray(from, from + packedSize);
  const bytes = method === stored ? packed : method === deflated ? inflate(packed, entry) : undefined;
  if (bytes === undefined)
    throw new ZipFault(path, `a file packed by method ${method}`, "a zip made by export");
  if (bytes.length !== size || crc32(bytes) !== entry.crc)
    throw new ZipFault(path, "bytes that are not those of its check sum", "the zip copied anew");
  return bytes;
}

function inflate(packed: Uint8Array, { path, size }: ZipEntry): Uint8Array {
  try {
    // Zero would mean no bound at all.
    return inflateRawSync(packed, { maxOutputLength: Math.max(1, size) });
  } catch (error) {
    if (!(error instanceof Error && "code" in error)) throw error;
    throw error.code === "ERR_BUFFER_TOO_LARGE"
      ? new ZipFault(path, "more bytes than it says it holds", "a zip made by export")
      : new ZipFault(path, "packed bytes that cannot be read", "the zip copied anew");
  }
}
