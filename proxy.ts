import { type NextRequest, NextResponse } from "next/server";
import { buildContentPolicy } from "./lib/safety/buildContentPolicy";
import { findRefusal } from "./lib/safety/findRefusal";
import { safetyHeaders } from "./lib/safety/safetyHeaders";

const nonceBytes = 16;

/**
 * Stands before every request: refuses what is not ours, and gives the rest its policy and headers.
 *
 * There is no `matcher` on purpose: files, prefetches and actions are all asked for by Host too.
 */
export function proxy(request: NextRequest): NextResponse {
  const refusal = findRefusal({
    method: request.method,
    host: request.headers.get("host"),
    origin: request.headers.get("origin"),
    fetchSite: request.headers.get("sec-fetch-site"),
    contentLength: request.headers.get("content-length"),
  });
  const nonce = Buffer.from(crypto.getRandomValues(new Uint8Array(nonceBytes))).toString("base64");
  const policy = buildContentPolicy({ nonce, development: process.env.NODE_ENV === "development" });

  const response =
    refusal === undefined
      ? NextResponse.next({ request: { headers: withPolicy(request.headers, policy) } })
      : new NextResponse(refusal.words, {
          status: refusal.status,
          headers: { "Content-Type": "text/plain; charset=utf-8" },
        });
  response.headers.set("Content-Security-Policy", policy);
  for (const [name, value] of Object.entries(safetyHeaders)) response.headers.set(name, value);
  return response;
}

/** Next reads the nonce for its own scripts from this header of the request. */
function withPolicy(headers: Headers, policy: string): Headers {
  const own = new Headers(headers);
  own.set("Content-Security-Policy", policy);
  return own;
}
