import type { Case } from "./caseFile";

/**
 * Ids of a case's root causes, in the order written down, without repetition: one as a rule, none where none was found;
 * either is right where there are two.
 */
export function rootCauses({ causes }: Pick<Case, "causes">): string[] {
  const roots: string[] = [];
  for (const { role, cause } of causes) if (role === "root" && !roots.includes(cause)) roots.push(cause);
  return roots;
}
