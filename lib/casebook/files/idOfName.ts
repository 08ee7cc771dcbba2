/** A longer id would make a long file name; what tells two apart is put behind it. */
const longest = 40;

/**
 * Makes an id out of a name or a title: its letters and digits without their marks, joined by hyphens; where it is taken, with
 * the first number behind it that is free.
 *
 * @param otherwise what stands for a name that has no such letters
 * @example idOfName("Zoë Bell", new Set(), "learner") // "zoe-bell"
 */
export function idOfName(name: string, taken: ReadonlySet<string>, otherwise: string): string {
  const plain = name
    .normalize("NFKD")
    .replaceAll(/\p{M}/gu, "")
    .toLowerCase()
    .replaceAll(/[^a-z0-9]+/g, "-")
    .slice(0, longest)
    .replaceAll(/^-+|-+$/g, "");
  const id = plain === "" ? otherwise : plain;
  for (let number = 1; ; number++) {
    const one = number === 1 ? id : `${id}-${number}`;
    if (!taken.has(one)) return one;
  }
}
