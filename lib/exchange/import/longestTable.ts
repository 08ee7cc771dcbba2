/** The largest table that the page takes, in characters; a larger one goes in by the command line. Chosen: 20,000 rows of the usual length. */
export const longestTable = 3_000_000;

/** As many bytes as such a table can have in a file: letters beyond ASCII take two. */
export const largestTableFile = 2 * longestTable;

/** What to do about a larger one. */
export const tooLong = `It is longer than ${longestTable / 1_000_000} million characters. Bring it in by the command line, or in parts.`;
