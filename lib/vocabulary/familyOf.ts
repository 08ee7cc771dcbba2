import type { Vocabulary } from "./vocabulary";

/**
 * The family that an instrument is counted under: the ancestor two steps below the root of the tree (brass and woodwind,
 * then brass, then piston-valve brass). An instrument that stands there by itself counts under its parent: a bugle is brass.
 *
 * @example familyOf(vocabulary, "piccolo-trumpet") // "piston-brass"
 */
export function familyOf({ instruments }: Vocabulary, instrument: string): string {
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
