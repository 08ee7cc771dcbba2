import type { Vocabulary } from "./vocabulary";

/**
 * Tells whether an entry written for some families serves an instrument: the instrument is one of them or lies under one.
 * An instrument not known serves every family: nothing is ruled out by not knowing.
 */
export function appliesTo(
  { instruments, instrumentTree }: Vocabulary,
  families: readonly string[],
  instrument: string | undefined,
): boolean {
  if (instrument === undefined || !instruments.has(instrument)) return true;
  return families.some(
    (family) => instrumentTree.isA(instrument, family) || instrumentTree.isA(family, instrument),
  );
}
