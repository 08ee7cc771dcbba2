/** Splits a text into lines at LF, CRLF or CR and drops a byte order mark. */
export function splitLines(text: string): string[] {
  return text.replace(/^\uFEFF/, "").split(/\r\n|\n|\r/);
}
