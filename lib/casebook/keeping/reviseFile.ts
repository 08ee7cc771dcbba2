import { type FileKeeper, holdFile, type RefusedFile, type ReplacedFile } from "./holdFile";
import type { KeepingPlace } from "./keepingPlace";

/** A file as somebody wants it to stand, and the version that they had before them when they wrote it. */
export type FileEdit = Readonly<{ text: string; baseHash: string }>;

/** A file that was saved; one that changed under the hands, with both versions; or what keeps it from being saved. */
export type RevisedFile = ReplacedFile | RefusedFile;

/**
 * Saves a new version of a file in place of the one that was edited; see `holdFile`.
 *
 * @param text must hold: nothing here looks into it
 */
export const reviseFile = (
  { text, baseHash }: FileEdit,
  place: KeepingPlace,
  keeper: FileKeeper,
): RevisedFile => holdFile(place, keeper, ({ replace }) => replace(text, baseHash));
