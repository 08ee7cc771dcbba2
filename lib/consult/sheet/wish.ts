import type { Case } from "../../casebook/caseFile";
import type { CaseForm, Fields } from "../../casebook/form/caseForm";
import type { Reader } from "../../reading/reader";
import type { SentSheet } from "./sentSheet";

/** What changing a sheet needs beside it: the handbook's reader, the time, and the other cases. */
export type SheetGround = Readonly<{
  reader: Reader;
  nowMs: number;
  caseOf: (id: string) => Case | undefined;
  /** The names of photos that were just taken for it. */
  photos?: readonly string[];
  /** Whether a photo of that name lies among those of the job. */
  hasPhoto?: (file: string) => boolean;
}>;

/** A sheet as it stood on the page, with what is wished of it. */
export type SheetWish = Readonly<{
  sent: SentSheet;
  /** The front matter as plain data, and the same as a form. */
  before: Fields;
  form: CaseForm;
  ground: SheetGround;
}>;

/** The sheet after the wish, as a form, with fields that the form does not hold; or what keeps it from being met. */
export type WishMet =
  | Readonly<{ form: CaseForm; fields?: Fields }>
  | Readonly<{ fault: Readonly<{ field: string; received: string; expected: string }> }>;

/** What keeps a wish from being met, in the words of a problem. */
export const refuse = (field: string, received: string, expected: string): WishMet => ({
  fault: { field, received, expected },
});
