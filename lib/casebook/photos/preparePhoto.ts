import { fileTypeFromBuffer } from "file-type";
import sharp, { type Metadata, type SharpOptions } from "sharp";
import { nameOfPhoto } from "./nameOfPhoto";
import { photoLimits, photoSides } from "./photoLimits";

/** A photo in the two sizes that are kept, as JPEG without anything that a camera writes beside the picture. */
export type MadePhoto = Readonly<{ kind: "made"; file: string; large: Buffer; thumb: Buffer }>;

/** What keeps a picture from being taken, in the words of a problem. */
export type RefusedPhoto = Readonly<{ kind: "refused"; received: string; expected: string }>;

const formats: ReadonlySet<string> = new Set([
  "image/jpeg",
  "image/png",
  "image/webp",
  "image/avif",
  "image/heic",
  "image/heif",
]);
const wanted = "a photo: JPEG, PNG, WebP or AVIF";
const quality = { large: 82, thumb: 76 };
const longestSeconds = 30;

/**
 * Makes the two sizes of a photo that was sent: upright, in sRGB, on white where it was clear, without EXIF, position, colour
 * profile or comments. What it is is told from its bytes; its name counts for nothing but the words of a refusal. How large it
 * is is told from its header, before any of it is unpacked.
 *
 * @param bytes the whole file as it was sent
 * @param name what its sender called it
 * @returns the sizes under a name made from their hash, the same for the same photo; or why it is refused
 */
export async function preparePhoto(bytes: Uint8Array, name: string): Promise<MadePhoto | RefusedPhoto> {
  const called = `'${shortName(name)}'`;
  const refuse = (what: string, expected: string): RefusedPhoto => ({
    kind: "refused",
    received: `${called}, ${what}`,
    expected,
  });
  if (bytes.length === 0) return refuse("which is empty", wanted);
  if (bytes.length > photoLimits.bytes)
    return refuse(
      `which weighs ${Math.ceil(bytes.length / 2 ** 20)} MB`,
      `a photo of at most ${photoLimits.bytes / 2 ** 20} MB`,
    );
  const type = await fileTypeFromBuffer(bytes);
  if (!type || !formats.has(type.mime))
    return refuse(
      `which by its content is ${type ? `${type.ext.toUpperCase()} data` : "no picture"}`,
      wanted,
    );
  const isHeif = type.mime.startsWith("image/hei");
  try {
    const { width, height } = await headOf(bytes);
    if (width * height > photoLimits.pixels)
      return refuse(
        `which is ${width} by ${height} pixels`,
        `a photo of at most ${photoLimits.pixels / 1e6} million pixels, such as 8000 by 8000`,
      );
    const large = await shrink(bytes, "large");
    const thumb = await shrink(large, "thumb");
    return { kind: "made", file: nameOfPhoto(large), large, thumb };
  } catch (error) {
    if (!(error instanceof Error)) throw error;
    return isHeif
      ? refuse("a HEIC picture that cannot be opened here", "it as JPEG: let the camera save as JPEG")
      : refuse("which is damaged or cut off", "the whole file: copy it from the camera once more");
  }
}

const headOf = (bytes: Uint8Array): Promise<Metadata> => sharp(bytes, { limitInputPixels: false }).metadata();

function shrink(bytes: Uint8Array, size: keyof typeof photoSides): Promise<Buffer> {
  const options: SharpOptions = { limitInputPixels: photoLimits.pixels, failOn: "error" };
  return sharp(bytes, options)
    .timeout({ seconds: longestSeconds })
    .autoOrient()
    .resize({ width: photoSides[size], height: photoSides[size], fit: "inside", withoutEnlargement: true })
    .flatten({ background: "#ffffff" })
    .jpeg({ quality: quality[size], progressive: true, mozjpeg: true })
    .toBuffer();
}

/** A name as it may stand in a sentence: without control characters, and not endless. */
function shortName(name: string): string {
  const plain = name.replaceAll(/[\p{C}]/gu, "").trim() || "a file without a name";
  return plain.length > 60 ? `${plain.slice(0, 59)}…` : plain;
}
