import { z } from "zod";

/** The browser's own copy of what was typed at an open job and is not on disk yet, one a form. */
const prefix = "sheet:";
const copySchema = z.object({
  hash: z.string(),
  sent: z.boolean(),
  fields: z.array(z.tuple([z.string(), z.string()])),
});

/** Keeps what stands in a form's fields; a browser that keeps nothing (private window, full store) goes without. */
export function keepCopy(form: HTMLFormElement, place: string, hash: string): void {
  const fields = fieldsOf(form).map((field): [string, string] => [field.name, field.value]);
  store(place, { hash, sent: false, fields });
}

/** Takes note that the copy is on its way: once the page shows another version it is no longer needed. */
export function markSent(place: string): void {
  const copy = recall(place);
  if (copy) store(place, { ...copy, sent: true });
}

/** Puts a kept copy back into a form that is as the page made it; forgets one that has arrived. */
export function takeCopy(form: HTMLFormElement, place: string, hash: string): void {
  const copy = recall(place);
  if (!copy) return;
  if (copy.sent && copy.hash !== hash) {
    localStorage.removeItem(prefix + place);
    return;
  }
  const kept = new Map(copy.fields);
  for (const field of fieldsOf(form)) {
    const value = kept.get(field.name);
    if (value !== undefined) field.value = value;
  }
}

/** What is not typed. */
const unkept: ReadonlySet<string> = new Set(["hidden", "checkbox", "file"]);

const fieldsOf = (form: HTMLFormElement) =>
  [...form.elements].filter(
    (field): field is HTMLInputElement | HTMLTextAreaElement | HTMLSelectElement =>
      field instanceof HTMLTextAreaElement ||
      field instanceof HTMLSelectElement ||
      (field instanceof HTMLInputElement && !unkept.has(field.type)),
  );

function recall(place: string): z.infer<typeof copySchema> | undefined {
  try {
    return copySchema.safeParse(JSON.parse(localStorage.getItem(prefix + place) ?? "null")).data;
  } catch {
    return undefined;
  }
}

function store(place: string, copy: z.infer<typeof copySchema>): void {
  try {
    localStorage.setItem(prefix + place, JSON.stringify(copy));
  } catch {
    // A browser that keeps nothing: the page and the server still do.
  }
}
