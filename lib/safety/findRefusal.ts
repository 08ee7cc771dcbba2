import { isForeignWrite, type RequestSource } from "./isForeignWrite";
import { isOwnHost } from "./isOwnHost";

const strangeHost =
  "Benchlore answers only at http://127.0.0.1 or http://localhost on the machine it runs on. " +
  "This request named another host, so it was refused. Open the address that was printed when Benchlore started.\n";

const foreignWrite =
  "This request would change something, and it was sent by a page that is not Benchlore's own, so it was refused. " +
  "Nothing was changed. Open Benchlore itself and try again there.\n";

/**
 * Why a request must be refused, in plain words.
 *
 * @returns the text to answer with (status 403), or undefined when the request may go on
 */
export function findRefusal(request: RequestSource): string | undefined {
  if (!isOwnHost(request.host)) return strangeHost;
  if (isForeignWrite(request)) return foreignWrite;
  return undefined;
}
