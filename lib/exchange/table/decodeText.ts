/** A file's text, and how its bytes had to be read. */
export type DecodedText = Readonly<{ text: string; encoding: "UTF-8" | "UTF-16" | "Latin-1" }>;

/**
 * Reads the bytes of a text file: by its byte order mark where it has one, else as UTF-8, else as Latin-1 in the manner of
 * the web (Windows-1252), in which any byte is a letter; so the caller should say that it was taken for that.
 *
 * @returns undefined for what is no text: a zero byte stands in it
 * Source: WHATWG Encoding Standard, sections 4.2 (labels) and 6 (BOM sniff).
 */
export function decodeText(bytes: Uint8Array): DecodedText | undefined {
  const [first, second] = bytes;
  const wide =
    first === 0xff && second === 0xfe ? "utf-16le" : first === 0xfe && second === 0xff ? "utf-16be" : "";
  const decoded: DecodedText = wide
    ? { text: new TextDecoder(wide).decode(bytes), encoding: "UTF-16" }
    : (decodeUtf8(bytes) ?? { text: new TextDecoder("windows-1252").decode(bytes), encoding: "Latin-1" });
  return decoded.text.includes("\0") ? undefined : decoded;
}

function decodeUtf8(bytes: Uint8Array): DecodedText | undefined {
  try {
    return { text: new TextDecoder("utf-8", { fatal: true }).decode(bytes), encoding: "UTF-8" };
  } catch (error) {
    if (error instanceof TypeError) return undefined;
    throw error;
  }
}
