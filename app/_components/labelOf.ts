/**
 * The label of a vocabulary entry; its id where the vocabulary has no such entry, so that nothing is shown blank.
 */
export function labelOf(entries: ReadonlyMap<string, Readonly<{ label: string }>>, id: string): string {
  return entries.get(id)?.label ?? id;
}
