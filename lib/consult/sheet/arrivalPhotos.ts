import type { Fields } from "../../casebook/form/caseForm";
import { groupOf, listOf, wordsIn } from "../../casebook/form/fieldTexts";
import { refuse, type SheetWish, type WishMet } from "./wish";

/** Adds photos that were just taken, with what they show where it was said; one that is there already is not added again. */
export function addPhotos({ sent, before, form, ground: { photos = [] } }: SheetWish): WishMet {
  const named = new Set(listOf(before.photos).map(fileOf));
  const added = photos.filter((file) => !named.has(file)).map((file) => described({ file }, sent.caption));
  if (added.length === 0)
    return refuse("photos", "only photos that the sheet has already", "other ones, or leave it as it is");
  return { form, fields: { photos: [...listOf(before.photos), ...added] } };
}

/** Says what a photo shows; blank words take away what was said. */
export function describePhoto({ sent, before, form }: SheetWish): WishMet {
  return onPhoto(sent.photo, before, (photos, at) => ({
    form,
    fields: { photos: photos.with(at, described(groupOf(photos[at]), sent.caption)) },
  }));
}

/** Takes a photo off the sheet. Its file stays where it is: earlier versions name it, and it can be put back. */
export function takeOffPhoto({ sent, before, form }: SheetWish): WishMet {
  return onPhoto(sent.photo, before, (photos, at) => {
    const left = photos.toSpliced(at, 1);
    return { form, fields: { photos: left.length > 0 ? left : undefined } };
  });
}

/** Puts a photo back that was taken off, where it stood and with what was said of it. */
export function putBackPhoto({ sent, before, form, ground: { hasPhoto } }: SheetWish): WishMet {
  const photos = listOf(before.photos);
  if (!hasPhoto?.(sent.photo))
    return refuse("photos", "a photo whose file is not there", "it anew: choose the photo once more");
  if (photos.some((photo) => fileOf(photo) === sent.photo))
    return refuse("photos", "a photo that the sheet has already", "nothing: it is there");
  const at = sent.at < 0 ? photos.length : sent.at;
  return {
    form,
    fields: { photos: photos.toSpliced(at, 0, described({ file: sent.photo }, sent.caption)) },
  };
}

const fileOf = (photo: unknown) => groupOf(photo).file;

function described({ caption: _, ...photo }: Fields, words: string): Fields {
  const caption = wordsIn(words);
  return caption === undefined ? photo : { ...photo, caption };
}

function onPhoto(
  file: string,
  before: Fields,
  change: (photos: readonly unknown[], at: number) => WishMet,
): WishMet {
  const photos = listOf(before.photos);
  const at = photos.findIndex((photo) => file !== "" && fileOf(photo) === file);
  return at < 0
    ? refuse("photos", "a photo that the sheet does not have", "one of those on it")
    : change(photos, at);
}
