import type { MouseEvent } from "react";

/** What an answer is made of, as the form names it. */
const answerFields = ["cause", "sure", "repair", "first"] as const;

/** Lets a link to the next check take along what was filled in under the answer so far, so that no suspicion is written twice. */
export function carryAnswer({ currentTarget: link }: MouseEvent<HTMLAnchorElement>): void {
  const form = document.querySelector("#answer form");
  if (!(form instanceof HTMLFormElement)) return;
  const filled = new FormData(form);
  const said = answerFields.flatMap((name) =>
    filled.getAll(name).map((value) => [name, String(value)] as const),
  );
  const to = new URL(link.href);
  for (const name of answerFields) to.searchParams.delete(name);
  if (said.some(([, value]) => value.trim() !== ""))
    for (const [name, value] of said) to.searchParams.append(name, value);
  link.href = to.href;
}
