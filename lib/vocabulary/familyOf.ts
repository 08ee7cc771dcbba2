import type { Vocabulary } from "./vocabulary";

/** Families found so far; a casebook asks for the same few instruments again and again. */
const remembered = new WeakMap<Vocabulary["instruments"], Map<string, string>>();

/**
 * The family that an instrument is counted under: the ancestor two steps below the root of the tree (brass and woodwind,
 * then brass, then piston-valve brass). An instrument that stands there by itself counts under its parent: a bugle is brass.
 *
 * @example familyOf(vocabulary, "piccolo-trumpet") // "piston-brass"
 */
export function familyOf({ instruments }: Pick<Vocabulary, "instruments">, instrument: string): string {
  let known = remembered.get(instruments);
  if (known === undefined) {
    known = new Map();
    remembered.set(instruments, known);
  }
  const family = known.get(instrument) ?? findFamily(instruments, instrument);
  known.set(instrument, family);
  return family;
}

function findFamily(instruments: Vocabulary["instruments"], instrument: string): string {
  const line: string[] = [];
  let id: string | undefined = instrument;
  while (id !== undefined) {
    line.unshift(id);
    id = instruments.get(id)?.parent;
  }
  const [, above = instrument, family = instrument] = line;
  const isFamily = [...instruments.values()].some(({ parent }) => parent === family);
  return family === instrument && !isFamily && line.length === 3 ? above : family;
}
