import type { SwapResult } from "./benchQuery";

/** A piston between two walls: clear of both, on one, on both; walls alone while not tried. */
export function SwapMark({ result }: Readonly<{ result: SwapResult | null }>) {
  const walls = result === null ? { strokeWidth: 2, strokeDasharray: "3 3" } : { strokeWidth: 3 };
  return (
    <svg viewBox="0 0 34 22" width="34" height="22" aria-hidden="true">
      <path d="M4 1v20M30 1v20" stroke="currentColor" {...walls} />
      {result === "free" ? (
        <rect x="11" y="4" width="12" height="14" fill="none" stroke="currentColor" strokeWidth="2" />
      ) : null}
      {result === "drags" ? (
        <>
          <path d="M14 3h14v16H14z" fill="none" stroke="currentColor" strokeWidth="2" />
          <path d="M22 3h6v16h-6z" fill="currentColor" />
        </>
      ) : null}
      {result === "sticks" ? <path d="M6 3h22v16H6z" fill="currentColor" /> : null}
    </svg>
  );
}
