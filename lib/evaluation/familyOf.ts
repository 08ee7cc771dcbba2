import type { Vocabulary } from "../vocabulary/vocabulary";

/**
 * The family that an instrument is counted under: the ancestor two steps below the root of the tree (brass and woodwind,
 * then brass, then piston-valve brass), or the instrument itself where it stands higher.
 *
 * @example familyOf(vocabulary, "piccolo-trumpet") // "piston-brass"
 */
export function familyOf({ instruments }: Vocabulary, instrument: string): string {
  const line: string[] = [];
  for (let id: string | undefined = instrument; id !== undefined; id = instruments.get(id)?.parent)
    line.unshift(id);
  return line[2] ?? instrument;
}
