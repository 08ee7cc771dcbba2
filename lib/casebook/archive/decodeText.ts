// A byte order mark is one of the file's bytes and stays.
const utf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

/** Reads bytes as UTF-8 text; undefined where they are none. */
export function decodeText(bytes: Uint8Array): string | undefined {
  try {
    return utf8.decode(bytes);
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
}
