/** What is looked at to tell where a request comes from; a header that was not sent is null. */
export interface RequestSource {
  readonly method: string;
  readonly host: string | null;
  readonly origin: string | null;
  /** The Sec-Fetch-Site header. */
  readonly fetchSite: string | null;
}

const readingMethods: ReadonlySet<string> = new Set(["GET", "HEAD"]);

/** `none` is a request that the person began from the address bar or a bookmark. */
const ownFetchSites: ReadonlySet<string> = new Set(["same-origin", "none"]);

/**
 * Whether a request that may change something was begun by a page that is not ours.
 *
 * Ours means: the Origin is `http://` or `https://` followed by the very Host that was asked, so that a page on
 * another port of the same machine is foreign, and so is the Origin `null` of a sandboxed or local page. Without
 * an Origin, Sec-Fetch-Site decides. With neither, no browser page sent it (browsers put an Origin on every
 * write), and a program on this machine could write the files itself.
 *
 * @returns true when the request should be refused; always false for GET and HEAD
 * Source: Fetch standard, section 'Origin header'; W3C Fetch Metadata Request Headers, section 2.3.
 */
export function isForeignWrite({ method, host, origin, fetchSite }: RequestSource): boolean {
  if (readingMethods.has(method.toUpperCase())) return false;
  if (origin !== null) {
    const own = (host ?? "").toLowerCase();
    const given = origin.toLowerCase();
    return given !== `http://${own}` && given !== `https://${own}`;
  }
  return fetchSite !== null && !ownFetchSites.has(fetchSite);
}
