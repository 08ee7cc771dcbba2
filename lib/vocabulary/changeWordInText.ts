import { isMap, isScalar, isSeq, parseDocument } from "yaml";
import type { WordChange } from "./wordChange";

/** A file of causes with one word changed; that it does not tell of the cause; or the word that stands there by now. */
export type ChangedText =
  | Readonly<{ kind: "changed"; text: string }>
  | Readonly<{ kind: "absent" }>
  | Readonly<{ kind: "moved"; now: string | undefined }>;

/**
 * Changes one frequency word in the text of a file of causes. Nothing but the word's own letters is touched: comments, order,
 * quotes elsewhere and line ends stay as they are.
 *
 * @param text a YAML list of causes
 * @throws RangeError when anything but the word would read otherwise afterwards, which no file that loads gives rise to
 */
export function changeWordInText(text: string, change: WordChange): ChangedText {
  const { cause, others, check, outcome, word, proposed } = change;
  const document = parseDocument(text);
  const list = document.contents;
  if (document.errors.length > 0 || !isSeq(list)) return { kind: "absent" };
  const place = list.items.findIndex(
    (item) => isMap(item) && item.has("id") && String(item.get("id")) === cause,
  );
  if (place < 0) return { kind: "absent" };
  const path = [place, others ? "others" : "findings", check, outcome];
  const node = document.getIn(path, true);
  if (!isScalar(node) || node.value !== word || !node.range)
    return { kind: "moved", now: isScalar(node) ? String(node.value) : undefined };
  const changed = text.slice(0, node.range[0]) + proposed + text.slice(node.range[1]);
  document.setIn(path, proposed);
  if (JSON.stringify(parseDocument(changed).toJSON()) !== JSON.stringify(document.toJSON()))
    throw new RangeError(
      `only the word must change; the whole reads otherwise after ${JSON.stringify(path)}; change it by hand`,
    );
  return { kind: "changed", text: changed };
}
