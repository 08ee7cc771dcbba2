/** What one request's policy is made from. */
export interface PolicyInput {
  /** Base64 of at least 16 random bytes, made anew for each request. */
  readonly nonce: string;
  /** True only under the development server, whose error reports need eval. */
  readonly development: boolean;
}

/** 16 bytes come to 22 base64 digits; anything that could end a directive or a quotation is kept out. */
const nonceForm = /^[A-Za-z0-9+/]{22,}={0,2}$/;

/**
 * The Content-Security-Policy of one request: only our own files, only scripts that carry the nonce or were
 * loaded by one that does, no inline style attributes, no frames, no plug-ins, forms to ourselves alone.
 *
 * @returns the header's value on one line
 * @throws RangeError when the nonce is not base64 of 16 bytes or more
 * Source: W3C Content Security Policy Level 3, sections 6 (directives) and 8.2 (strict-dynamic).
 */
export function buildContentPolicy({ nonce, development }: PolicyInput): string {
  if (!nonceForm.test(nonce)) {
    throw new RangeError(
      `a nonce must be base64 of at least 16 random bytes; got ${JSON.stringify(nonce)}; make one with crypto.getRandomValues`,
    );
  }
  const scripts = ["'self'", `'nonce-${nonce}'`, "'strict-dynamic'"];
  if (development) scripts.push("'unsafe-eval'");
  return [
    "default-src 'self'",
    `script-src ${scripts.join(" ")}`,
    `style-src 'self' 'nonce-${nonce}'`,
    "img-src 'self' data: blob:",
    "font-src 'self'",
    "connect-src 'self'",
    // Without its own line a worker falls under script-src, where 'strict-dynamic' switches 'self' off.
    "worker-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
}
