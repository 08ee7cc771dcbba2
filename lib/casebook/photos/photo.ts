import { z } from "zod";

const fileForm = /^[0-9a-f]{32}\.jpg$/;

/** The name of a photo's file: the beginning of the hash of its bytes, so that no name ever comes from outside. */
export const photoFileSchema = z
  .string()
  .regex(fileForm, "the name of a photo as it was made here: 32 digits and letters a to f, then .jpg");

/** A photo of a job's instrument as it came in: its file beside the casebook, and what it shows. */
export const photoSchema = z.looseObject({
  file: photoFileSchema,
  caption: z.string().trim().min(1).max(300).optional(),
});
export type Photo = z.infer<typeof photoSchema>;

/** As many photos as a job may have. */
export const mostPhotos = 40;

/**
 * The name of the small size of a photo.
 *
 * @example thumbOf("0123456789abcdef0123456789abcdef.jpg") // "0123456789abcdef0123456789abcdef.thumb.jpg"
 */
export const thumbOf = (file: string) => file.replace(/\.jpg$/, ".thumb.jpg");
