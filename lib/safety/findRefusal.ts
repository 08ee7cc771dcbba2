import { isForeignWrite, type RequestSource } from "./isForeignWrite";
import { isOwnHost } from "./isOwnHost";
import { mostSentBytes } from "./mostSentBytes";

/** Why a request is not let through: the status to answer with, and plain words. */
export type Refusal = Readonly<{ status: 403 | 413; words: string }>;

const strangeHost =
  "Benchlore answers only at http://127.0.0.1 or http://localhost on the machine it runs on. " +
  "This request named another host, so it was refused. Open the address that was printed when Benchlore started.\n";

const foreignWrite =
  "This request would change something, and it was sent by a page that is not Benchlore's own, so it was refused. " +
  "Nothing was changed. Open Benchlore itself and try again there.\n";

const tooMuch =
  `What was sent weighs more than ${mostSentBytes / 2 ** 20} MB, so it was refused. Nothing was changed. ` +
  "Go back and send fewer photos at one go; a larger zip goes in by the command line.\n";

/**
 * Why a request must be refused, in plain words.
 *
 * @param request with the Content-Length header, where one was sent
 * @returns undefined when the request may go on
 */
export function findRefusal(
  request: RequestSource & Readonly<{ contentLength?: string | null }>,
): Refusal | undefined {
  if (!isOwnHost(request.host)) return { status: 403, words: strangeHost };
  if (isForeignWrite(request)) return { status: 403, words: foreignWrite };
  if (Number(request.contentLength ?? 0) > mostSentBytes) return { status: 413, words: tooMuch };
  return undefined;
}
